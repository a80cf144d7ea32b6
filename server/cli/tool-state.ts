/** The state of a tool on a day: for a program in English, for people in their language. */
import type { Asset } from '../../language/model/shop.ts';
import { formatQuantity } from '../../language/quantities/index.ts';
import { joined, type Said, say } from '../../language/say/say.ts';

export function stateOn({ calibrations, due, outOfUse }: Asset, today: string): Said {
  if (outOfUse !== null && outOfUse <= today) return say`out of use since ${outOfUse}`;
  const inForce = calibrations.some(
    (one) => one.calibrated !== null && one.due !== null && one.calibrated <= today && today <= one.due,
  );
  if (inForce) return say`in date`;
  return due !== null && due < today ? say`overdue` : say`not calibrated`;
}

/** What was found at each calibration. */
export function foundAt({ calibrations }: Asset): Said {
  return joined(
    calibrations.flatMap(({ calibrated, found }) => {
      if (found === null) return [];
      const [error, at] = [formatQuantity(found.error), formatQuantity(found.at)];
      const said = found.high ? say`${error} high at ${at}` : say`${error} low at ${at}`;
      return [calibrated === null ? said : joined([calibrated, said])];
    }),
    '; ',
  );
}
