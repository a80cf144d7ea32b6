import type { Bundle } from '../bundle.ts';

export const drafting: Bundle = {
  'A first draft, made from the family. Each {0} is for you to fill in: no figure is given that nobody gave.':
    'Ein erster Entwurf, aus der Baureihe gemacht. Jedes {0} ist auszufüllen: Kein Wert steht da, den niemand angegeben hat.',
  '{0} torque': 'Anzugsmoment {0}',
  'Shim rate': 'Wirkung der Einstellscheibe',
  'Own lidded basket, own number': 'Eigener Korb mit Deckel, eigene Nummer',
  'Take in': 'Annahme',
  'As found': 'Anlieferungszustand',
  'Strip and mark': 'Zerlegen und kennzeichnen',
  'Wash and look over': 'Waschen und sichten',
  Build: 'Zusammenbau',
  'Own cup, own number': 'Eigener Becher, eigene Nummer',
  Set: 'Einstellen',
  Test: 'Prüfen',
  'Match the set': 'Satz abgleichen',
  Finish: 'Abschluss',
  'Change the shim': 'Einstellscheibe wechseln',
  'Free what binds': 'Gangbar machen, was klemmt',
  'Set it again': 'Neu einstellen',
  'Open it again': 'Noch einmal öffnen',
  'What does each part lie on, in or through? What holds it? Which parts are renewed every time?':
    'Worauf, worin oder worum liegt jedes Teil? Was hält es? Welche Teile werden immer erneuert?',
  'Ground and lapped faces, and what guards them: {0}': 'Geschliffene und geläppte Flächen, und was sie schützt: {0}',
};
