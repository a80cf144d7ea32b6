import { type StepSetting, settingsIn } from '../analysis/stages.ts';
import type { Procedure, Step } from '../model/procedure.ts';
import type { AnyRule, Report } from './rule.ts';

/** Steps at which no rule reported anything, and where they may be done. All else that they are judged by is the same. */
export type CleanSteps = WeakMap<Step, string>;

/** A step that rules are shown, and how much they reported at it. */
interface Shown {
  readonly step: Step;
  readonly setting: StepSetting;
  readonly places: string;
  reports: number;
}

/** Shows rules each step by itself, but for those that were clean before an edit and are still the same. */
export class StepPass {
  private readonly shown: Shown[] = [];
  private readonly clean: CleanSteps;

  constructor(procedure: Procedure, clean: CleanSteps) {
    this.clean = clean;
    for (const { steps, ...setting } of settingsIn(procedure)) {
      const places = JSON.stringify([setting.station, ...setting.stations]);
      for (const step of steps) if (clean.get(step) !== places) this.shown.push({ step, setting, places, reports: 0 });
    }
  }

  show(rule: AnyRule, report: (one: Report) => void) {
    if (rule.eachStep === undefined) return;
    for (const one of this.shown)
      rule.eachStep(one.step, one.setting, (found) => {
        one.reports++;
        report(found);
      });
  }

  /** Every rule has been shown them. */
  end() {
    for (const { step, places, reports } of this.shown) if (reports === 0) this.clean.set(step, places);
  }
}
