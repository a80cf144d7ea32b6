import { settingThroughAdapter } from '../engineering/adapter.ts';
import { preloadByFactor, torqueByFactor, torqueByFriction } from '../engineering/preload.ts';
import { proofLoad, propertyClasses, shareOfProofLoad, stressArea } from '../engineering/proof-load.ts';
import { say } from '../say/say.ts';
import type { Calculation, Input } from './calculation.ts';
import { figure, plain } from './figures.ts';

const torque: Input = { name: 'torque', kind: 'torque', words: say`torque at the nut`, most: '100000 N·m' };
const preload: Input = { name: 'preload', kind: 'force', words: say`force along the bolt`, most: '10000000 N' };
const factor: Input = {
  name: 'factor',
  kind: 'number',
  words: say`nut factor K; 0.2 is common for dry steel, no more than a guess`,
  most: '2',
};
const diameter: Input = {
  name: 'diameter',
  kind: 'length',
  words: say`nominal diameter of the thread`,
  most: '1000 mm',
};
const over = say`Each figure must be over nothing. Look at what was typed.`;

export const torqueCalculations: readonly Calculation[] = [
  {
    name: 'wrench-setting',
    title: say`What to set on a wrench that turns the nut through an adapter`,
    formula: [say`setting = torque · wrench / (wrench + adapter · cos angle)`],
    source: say`TM 9-254, general maintenance of torque wrenches`,
    inputs: [
      torque,
      { name: 'wrench', kind: 'length', words: say`from the mark on the grip to the square drive`, most: '5000 mm' },
      {
        name: 'adapter',
        kind: 'length',
        words: say`from the square drive to the nut`,
        from: 'nothing',
        most: '5000 mm',
      },
      {
        name: 'angle',
        kind: 'angle',
        words: say`between wrench and adapter; 0° where none is given`,
        optional: true,
        from: 'anywhere',
        most: '360°',
      },
    ],
    example: ['torque=60 N·m', 'wrench=400 mm', 'adapter=50 mm'],
    work(given) {
      const angle = given.has('angle') ? given.quantity('angle') : null;
      const [wrench, adapter] = [given.quantity('wrench'), given.quantity('adapter')];
      const setting = settingThroughAdapter(given.quantity('torque'), wrench, { length: adapter, angle });
      if (setting === null)
        return {
          problem: say`The nut would lie at the grip or behind it, or the wrench has no length. Measure again.`,
        };
      return {
        steps: [
          `setting = ${figure(given.quantity('torque'))} · ${figure(wrench)} / (${figure(wrench)} + ${figure(adapter)} · cos ${angle === null ? '0°' : figure(angle)})`,
        ],
        answer: [say`setting ${figure(setting)}`],
      };
    },
  },
  {
    name: 'torque-for-preload',
    title: say`Torque for a preload, by the nut factor`,
    formula: ['torque = K · preload · diameter'],
    source: say`Shigley, Mechanical Engineering Design (from memory)`,
    inputs: [preload, diameter, factor],
    example: ['preload=25000 lbf', 'diameter=0.75 in', 'factor=0.2'],
    work(given) {
      const made = torqueByFactor(given.quantity('preload'), given.quantity('diameter'), given.number('factor'));
      if (made === null) return { problem: over };
      return {
        steps: [
          `torque = ${plain(given.number('factor'))} · ${figure(given.quantity('preload'))} · ${figure(given.quantity('diameter'))}`,
        ],
        answer: [say`torque ${figure(made)}`],
      };
    },
  },
  {
    name: 'preload-of-torque',
    title: say`Preload that a torque brings, by the nut factor`,
    formula: ['preload = torque / (K · diameter)'],
    source: say`Shigley, Mechanical Engineering Design (from memory)`,
    inputs: [torque, diameter, factor],
    example: ['torque=60 N·m', 'diameter=12 mm', 'factor=0.2'],
    work(given) {
      const made = preloadByFactor(given.quantity('torque'), given.quantity('diameter'), given.number('factor'));
      if (made === null) return { problem: over };
      return {
        steps: [
          `preload = ${figure(given.quantity('torque'))} / (${plain(given.number('factor'))} · ${figure(given.quantity('diameter'))})`,
        ],
        answer: [say`preload ${figure(made)}`],
      };
    },
  },
  {
    name: 'torque-with-friction',
    title: say`Torque for a preload, from the friction of thread and face`,
    formula: ['torque = preload · (pitch / 2π + µt · rt / cos 30° + µn · rn)'],
    source: say`Long form for 60° threads, as in Shigley, Mechanical Engineering Design (from memory)`,
    inputs: [
      preload,
      { name: 'pitch', kind: 'length', words: say`pitch of the thread`, most: '20 mm' },
      { name: 'thread-radius', kind: 'length', words: say`rt, half the pitch diameter`, most: '500 mm' },
      {
        name: 'thread-friction',
        kind: 'number',
        words: say`µt, the friction of the thread`,
        from: 'nothing',
        most: '2',
      },
      { name: 'face-radius', kind: 'length', words: say`rn, mean radius of the face under the head`, most: '1000 mm' },
      { name: 'face-friction', kind: 'number', words: say`µn, the friction of the face`, from: 'nothing', most: '2' },
    ],
    example: [
      'preload=25000 lbf',
      'pitch=0.0625 in',
      'thread-radius=0.3547 in',
      'thread-friction=0.15',
      'face-radius=0.46875 in',
      'face-friction=0.15',
    ],
    work(given) {
      const made = torqueByFriction(given.quantity('preload'), {
        pitch: given.quantity('pitch'),
        threadRadius: given.quantity('thread-radius'),
        threadFriction: given.number('thread-friction'),
        faceRadius: given.quantity('face-radius'),
        faceFriction: given.number('face-friction'),
      });
      if (made === null) return { problem: over };
      return {
        steps: [
          `lever = ${figure(given.quantity('pitch'))} / 2π + ${plain(given.number('thread-friction'))} · ${figure(given.quantity('thread-radius'))} / cos 30° + ${plain(given.number('face-friction'))} · ${figure(given.quantity('face-radius'))}`,
        ],
        answer: [say`torque ${figure(made)}`],
      };
    },
  },
  {
    name: 'proof-load',
    title: say`How far a torque loads a solid bolt or stud (never a hollow nut or holder)`,
    formula: [
      say`stress area = π/4 · (d − 0.9382 · P)²`,
      'preload = torque / (K · d)',
      say`share = preload / (proof stress · stress area)`,
    ],
    source: say`ISO 898-1 (stress area, and proof stress by class: from memory); nut factor as in Shigley (from memory)`,
    inputs: [
      torque,
      diameter,
      { name: 'pitch', kind: 'length', words: say`pitch of the metric thread`, most: '20 mm' },
      { name: 'class', kind: 'number', words: say`property class on the head: ${propertyClasses.join(', ')}` },
      factor,
    ],
    example: ['torque=50 N·m', 'diameter=8 mm', 'pitch=1.25 mm', 'class=8.8', 'factor=0.2'],
    work(given) {
      const [size, pitch] = [given.quantity('diameter'), given.quantity('pitch')];
      const propertyClass = String(given.number('class'));
      if (!propertyClasses.includes(propertyClass))
        return {
          problem: say`There is no class ${propertyClass}: they are ${propertyClasses.join(', ')}. Read it off the head.`,
        };
      const bolt = { diameter: size, pitch, propertyClass };
      const area = stressArea(size, pitch);
      const load = proofLoad(size, pitch, propertyClass);
      const share = shareOfProofLoad(given.quantity('torque'), bolt, given.number('factor'));
      const preload = preloadByFactor(given.quantity('torque'), size, given.number('factor'));
      if (area === null || load === null || share === null || preload === null) return { problem: over };
      return {
        steps: [
          say`stress area = π/4 · (${figure(size)} − 0.9382 · ${figure(pitch)})² = ${plain(area * 1e6)} mm²`,
          say`proof load = ${figure(load)}`,
          `preload = ${figure(given.quantity('torque'))} / (${plain(given.number('factor'))} · ${figure(size)}) = ${figure(preload)}`,
        ],
        answer: [
          say`${plain(share * 100)} % of the proof load${share > 1 ? say`: the bolt stretches for good. Look at the torque, the thread and the class again` : ''}`,
        ],
      };
    },
  },
];
