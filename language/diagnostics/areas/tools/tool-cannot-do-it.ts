import { capital, stationWords } from '../../../analysis/prose.ts';
import { doWords, limitWords, takeOr, toolCalled, toolWords, workedOut } from '../../../analysis/tool-words.ts';
import { type ToolWork, workAt } from '../../../analysis/tool-work.ts';
import {
  aimOf,
  assetOf,
  betterTool,
  byHand,
  type Exchange,
  exchange,
  exchanged,
  isAsked,
  isAt,
  reaches,
  settingOn,
  suits,
} from '../../../analysis/tools.ts';
import type { Statement } from '../../../model/diagnostic.ts';
import type { Procedure, ToolUse } from '../../../model/procedure.ts';
import type { Asset } from '../../../model/shop.ts';
import { formatLimit } from '../../../quantities/index.ts';
import { english, say, term } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

interface Slip extends Statement {
  readonly use: ToolUse;
  readonly cause: string;
}

/** The tool that a step names, or the kind that it requires, cannot do the work or is not available there. */
export const toolCannotDoIt: Rule<Exchange> = {
  code: 'tool-cannot-do-it',
  severity: 'error',
  since: '0.2.0',
  title: 'The tool that a step names cannot do the work, or is not available.',
  eachStep(step, setting, report) {
    for (const work of workAt(setting, step)) {
      const better = betterTool(setting, work);
      const slip = slipOf(setting, work, better);
      if (slip === null) continue;
      const { use, cause, ...said } = slip;
      report({
        at: work.step,
        source: use.source,
        rootCause: `tool-cannot:${cause}`,
        ...said,
        data: use.form === 'asset' ? exchange(work.step, use, better) : undefined,
      });
    }
  },
  fix: exchanged,
};

function slipOf(procedure: Pick<Procedure, 'shop'>, work: ToolWork, better: Asset | null): Slip | null {
  const { shop } = procedure;
  const { step, station, kind, limits } = work;
  const uses = step.tools.flatMap((use) => {
    const tool = use.form === 'asset' ? assetOf(shop, use) : use.form === 'kind' ? asked(use) : undefined;
    return tool === undefined ? [] : [{ use, tool }];
  });
  const [first] = uses;
  if (first === undefined) return null;
  const suitable = uses.filter(({ tool }) => suits(tool, kind));
  const [one] = suitable;
  if (one === undefined) {
    // It may serve another purpose in the step: the reading is on the station's gauge, or on a tool named in words.
    const besides = !byHand(step) || work.does === 'difference';
    if ((besides && better !== null) || step.tools.some((use) => use.form === 'words')) return null;
    const does = doWords(work);
    return {
      use: first.use,
      cause: `${first.tool.name}:${kind}`,
      message: say`${capital(toolWords(first.tool))} cannot ${does} ${kind === null ? say`a size` : say`a ${term(kind)}`}.`,
      why: say`${work.does === 'set' ? say`the joint would be tightened by feel` : say`the figure on the sheet would be a guess`}.`,
      help: takeOr(better, say`Name a ${toolCalled(kind)}.`),
    };
  }
  if (!suitable.some(({ tool }) => isAt(station, tool))) {
    return {
      use: one.use,
      cause: `${one.tool.name}:at:${station}`,
      message: say`${one.tool.name} is fixed at ${stationWords(procedure, one.tool.at)}, but this step is done at ${stationWords(procedure, station)}.`,
      why: say`the tool is not there to be read.`,
      help: takeOr(better, say`Do the step where the tool is, or delete its station in the shop if it can be moved.`),
    };
  }
  const missing = suitable.find(({ use }) => use.form === 'kind' && !shop.assets.some((asset) => isAsked(asset, use)));
  if (missing !== undefined) {
    return {
      use: missing.use,
      cause: `${shop.name}:${english(toolWords(missing.tool))}`,
      message: say`Shop ${shop.name} has no ${term(missing.tool.kind)}${missing.tool.range === null ? '' : say` for ${formatLimit(missing.tool.range)}`}.`,
      why: say`the job could name none, and the bench hand would use whatever is at hand.`,
      help: say`Name a kind that the shop has${better === null ? '' : say`, such as ${toolWords(better)}`}, or add one to the shop.`,
    };
  }
  const short = limits.find((judged) => !suitable.some(({ tool }) => reaches(work, judged, tool)));
  if (short === undefined) return null;
  const torque = work.does === 'set' ? aimOf(short.limit) : null;
  const setting = torque === null ? null : settingOn(step, one.tool, torque);
  const through =
    setting === null || setting === torque ? '' : say`, which is ${workedOut(setting)} on the wrench with this adapter`;
  return {
    use: one.use,
    cause: `${one.tool.name}:${formatLimit(short.limit)}`,
    message: say`${capital(toolWords(one.tool))} does not ${doWords(work)} ${limitWords(short)}${through}.`,
    why: say`beyond its scale it shows nothing, and if it is forced there it reads wrong on the next job.`,
    help: takeOr(better, say`Use a ${toolCalled(kind)} that covers ${limitWords(short)}.`),
  };
}

/** The kind of tool that a step requires, as if the shop had just that one. */
function asked(use: Extract<ToolUse, { form: 'kind' }>): Asset {
  const name = `a ${use.kind}`;
  return {
    name,
    title: name,
    source: use.source,
    kind: use.kind,
    range: use.range,
    within: null,
    accuracyClass: null,
    graduated: null,
    calibrated: null,
    at: null,
    due: null,
    calibrations: [],
    outOfUse: null,
    damped: false,
    digital: false,
    length: null,
  };
}
