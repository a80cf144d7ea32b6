/** What an author says can hurt of a part, a station or a step: facts that no verb, fluid or figure shows. */
export const dangers = [
  'live',
  'rotating',
  'hot',
  'cold',
  'heavy',
  'sharp',
  'spring-loaded',
  'stored pressure',
  'ultrasonic',
  'toxic',
] as const;

export type Danger = (typeof dangers)[number];
