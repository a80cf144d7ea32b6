import type { VerbRecord } from './verb.ts';

/** Faces and ports guarded and joined up, and the pressure behind them. */
export const ports = {
  guard: {
    objects: ['face'],
    takes: ['with part'],
    does: 'puts a part over a face, hand-tight; `remove` takes it off',
  },
  cap: { objects: ['port'], all: 'ports', takes: [], does: 'closes ports', is: ['as one', 'after sign-off'] },
  uncap: { objects: ['port'], all: 'ports', takes: [], does: 'opens ports', is: ['as one'] },
  connect: { objects: ['port'], takes: [], does: 'puts the line on', is: ['drives'], cautions: ['alone'] },
  disconnect: { objects: ['port'], takes: [], does: 'takes the line off', is: ['drives'], cautions: ['let-down'] },
  prime: {
    objects: [],
    takes: ['amount', 'for time', 'for text', 'with gauge'],
    does: 'brings pressure and lets the air out',
    cautions: ['oil-on-skin'],
  },
  relieve: { objects: [], takes: [], does: 'lets the pressure down, gauge at zero', cautions: ['let-down'] },
} as const satisfies Readonly<Record<string, VerbRecord>>;
