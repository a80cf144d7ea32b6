import type { Fluid } from '../../model/shop.ts';
import { own } from '../../model/steps.ts';
import { say } from '../../say/say.ts';
import { because, type Calls } from './calls.ts';
import type { Scene } from './caution.ts';

/** The fluid that the step uses, as the shop declares it. */
function fluidAt({ procedure, step }: Scene): Fluid | null {
  return procedure.shop.fluids.find((fluid) => fluid.name === own(step, 'fluid')) ?? null;
}

const fluidSays = ({ name }: Fluid, trait: string) => because(say`fluid ${name} is ${trait}`);

/** The step's fluid is of this kind. */
export const fluidIs =
  (kind: Fluid['kind']): Calls =>
  (scene) => {
    const fluid = fluidAt(scene);
    return fluid?.kind === kind ? fluidSays(fluid, kind) : null;
  };

/** A solvent, detergent or oil that burns by its own declaration. */
export const usesFlammable: Calls = (scene) => {
  const fluid = fluidAt(scene);
  return fluid?.flammable == null ? null : fluidSays(fluid, 'flammable');
};

/** It is called for, and there is a fluid: that is the reason then. */
export const withFluid =
  (call: Calls): Calls =>
  (scene) => {
    const fluid = fluidAt(scene);
    return fluid === null || call(scene) === null ? null : fluidSays(fluid, fluid.kind);
  };
