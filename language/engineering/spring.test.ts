import { expect, it } from 'vitest';
import { springStiffness } from './spring.ts';

const wire = { number: '0.037', unit: 'in' } as const;
const coil = { number: '0.400', unit: 'in' } as const;
// 11.85 Mpsi
const modulus = { number: '11850000', unit: 'psi' } as const;

it('gives the stiffness of Shigley, Ex. 10-1: 4.13 lbf/in (from memory)', () => {
  expect(Number(springStiffness({ modulus, wire, coil, coils: 10.5 }, 'lbf/in')!.number)).toBeCloseTo(4.13, 2);
});

it('is refused without coils, and with a wire as thick as the coil', () => {
  expect(springStiffness({ modulus, wire, coil, coils: 0 })).toBeNull();
  expect(springStiffness({ modulus, wire: coil, coil, coils: 3 })).toBeNull();
  expect(springStiffness({ modulus, wire, coil, coils: Number.NaN })).toBeNull();
});
