import { InvalidArgumentError } from 'commander';
import * as z from 'zod';
import { worded } from './messages.ts';

/** Today where the shop is, as dates are written in a job. */
export function today(): string {
  const now = new Date();
  return [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, '0')).join('-');
}

export function dateText(text: string): string {
  if (!z.iso.date().safeParse(text).success)
    throw new InvalidArgumentError(worded`${text} is not in the calendar. Write the date as year-month-day.`);
  return text;
}
