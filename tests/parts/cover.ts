import { checkFiles } from '../../language/db/workspace.ts';
import { renderText } from '../../language/documents/renderers/index.ts';
import { buildSheet } from '../../language/documents/traveler/index.ts';
import { fullMessage } from '../../language/model/diagnostic.ts';

/** A cover with its screws and two seals, on a pump. */
const coverText = `shop bench "Bench" {
  station strip "Strip-down bench" dirty
  station tank "Wash tank" wet
  station build "Clean room" clean
  wrench TW-20 range 4..20 N·m within 4 % due 2027-03-01
  fluid solvent "Cleaning solvent" solvent, flammable 62 °C
  fluid oil "Assembly oil" oil
}
family pump "Feed pump" {
  part body "Pump body" held in "fixture"
  part shaft "Shaft" in body
  part bush "Bearing bush" on shaft sides drive, cover-end
  part gasket "Gasket" on body renewed not toxic
  part cover "Cover" on gasket
  part screw "Cover screw" on cover holds cover quantity 3 renewed
  joint screw to body "M6"
}
procedure rebuild "Rebuild" for pump at bench
  revision A written by "Lead" approved by "Manager" on 2026-09-01
{
  spec screw-fit "Cover screw" torque 9 N·m ±1 source "Test sheet, page 2"
  stage strip "Strip" at strip {
    receive
    mark body with serial "On the flat"
    clamp body
    slacken screw
    discard screw
    remove cover
    discard gasket
    remove bush
    remove shaft
    keep bush, cover, shaft at tank
    unclamp body
  }
  stage clean "Wash" at tank {
    wash body, shaft, bush, cover in solvent
    blow-dry body, shaft, bush, cover with air at most 2 bar
    keep shaft, bush, cover at build
  }
  stage build "Build" at build {
    rinse body, shaft, bush, cover in oil
    clamp body
    fit shaft
    fit bush
    fit gasket, cover, screw
    run-down screw
    torque screw to screw-fit with TW-20
    unclamp body
    sign-off by "Lead"
  }
}
`;

export type Changes = readonly (readonly [string, string])[];

/** What is found in the cover with some texts in the place of others, and its card as text. */
export function coverWith(changes: Changes = [], of = coverText) {
  const text = changes.reduce((whole, [from, to]) => {
    if (!whole.includes(from)) throw new Error(`not there: ${from}`);
    return whole.replace(from, () => to);
  }, of);
  const { diagnostics, procedures } = checkFiles([{ uri: 'cover.rebuild', text }]);
  const procedure = procedures[0]?.procedure;
  return {
    found: diagnostics.map((one) => `${one.rule} ${one.source.range.start.line + 1}: ${fullMessage(one)}`),
    diagnostics,
    procedure: procedure!,
    card: (language: 'en' | 'es' | 'de' = 'en') =>
      renderText(
        buildSheet(procedure!, {
          paper: 'a4',
          draft: false,
          diagnostics: [],
          hash: 'ab'.repeat(32),
          job: null,
          number: null,
          language,
        } as Parameters<typeof buildSheet>[1]),
      ).map((line) => line.replaceAll(/[\u00a0\u202f]/gu, ' ')),
  };
}
