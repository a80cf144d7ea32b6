import { isHydraulic } from '../../../analysis/hydraulic.ts';
import { allSteps, port } from '../../../analysis/locations.ts';
import { say } from '../../../say/say.ts';
import { blank } from '../../edits.ts';
import { rootCauseKey, rootCauses } from '../../root-cause.ts';
import { on, type Rule } from '../../rule.ts';
import { fixStep, missingBefore, type StepFix } from '../../step-fixes.ts';

/** Pressure is read, held or set while the unit is not connected, or at a station without pressure. */
export const notOnTheTester: Rule<StepFix> = {
  code: 'not-on-the-tester',
  severity: 'error',
  since: '0.1.0',
  unsafe: true,
  title: 'A pressure test is run while the unit is not connected, or away from the tester.',
  flow: ({ graph, layout }, report) => {
    const { procedure } = graph;
    const stations = procedure.shop.stations
      .filter((station) => station.pressure)
      .map((station) => layout.stationBit(station.name));
    const atPressure = stations.reduce((all, bit) => all | bit, 0);
    const causeOf = rootCauses('connected');
    return {
      looksAround: true,
      step: on(['prime', 'test', 'read', 'set'], ({ step, before, path }) => {
        if (!isHydraulic(step, procedure)) return;
        const what =
          step.verb === 'prime'
            ? say`primed`
            : step.verb === 'read'
              ? say`read`
              : step.verb === 'set'
                ? say`set`
                : say`tested`;
        if (atPressure !== 0 && !before.must(layout.unit.station, atPressure)) {
          report({
            at: step,
            path,
            since: before.since(layout.unit.station),
            rootCause: `tester:${before.since(layout.unit.station)}`,
            message: say`The unit is not at a station with pressure when it is ${what}.`,
            why: say`there is nothing there to bring it up to pressure.`,
            help: say`Move the step to a stage at the tester, or write pressure at that station in the shop.`,
          });
          return;
        }
        const ports = procedure.family.ports;
        if (ports.length === 0 || ports.some((one) => before.must(layout.ports.get(one.name)!, port.connected))) return;
        const usual = allSteps(procedure).find(({ verb }) => verb === 'connect')?.objects[0]?.name;
        const since = Math.max(...ports.map((one) => before.since(layout.ports.get(one.name)!)));
        report({
          at: step,
          path,
          since,
          rootCause: causeOf(rootCauseKey(path, since), step),
          message: say`No line is connected when the unit is ${what}.`,
          why: say`there is no pressure in it.`,
          help: say`Write “connect” and the port before this step.`,
          // Where a line is connected on one path, or after a repair, the step is missing somewhere else.
          data:
            path.repair !== null || ports.some((one) => before.may(layout.ports.get(one.name)!, port.connected))
              ? undefined
              : missingBefore(step, `connect ${ports.length === 1 ? ports[0]!.name : (usual ?? blank)}`),
        });
      }),
    };
  },
  fix: fixStep,
};
