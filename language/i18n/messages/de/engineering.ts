import type { Bundle } from '../bundle.ts';

export const engineering: Bundle = {
  'The guide must have a diameter over nothing.': 'Die Führung muss einen Durchmesser über null haben.',
  'The seat cannot have a diameter under nothing.': 'Der Sitz kann keinen Durchmesser unter null haben.',
  'The seat is as wide as the guide or wider: no pressure would lift this needle. Measure both again.':
    'Der Sitz ist so breit wie die Führung oder breiter: Kein Druck würde diese Nadel heben. Beide noch einmal messen.',
};
