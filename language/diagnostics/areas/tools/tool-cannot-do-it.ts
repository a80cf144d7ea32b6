import { capital, stationWords } from '../../../analysis/prose.ts';
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
} from '../../../analysis/tool-choice.ts';
import { doWords, limitWords, takeOr, toolCalled, toolWords, workedOut } from '../../../analysis/tool-words.ts';
import { type ToolWork, toolWork } from '../../../analysis/tool-work.ts';
import type { Statement } from '../../../model/diagnostic.ts';
import type { Procedure, ToolUse } from '../../../model/procedure.ts';
import type { Asset } from '../../../model/shop.ts';
import { formatLimit } from '../../../quantities/index.ts';
import type { Rule } from '../../rule.ts';

interface Slip extends Statement {
  readonly use: ToolUse;
  readonly cause: string;
}

/** The tool that a step names, or the kind that it asks for, cannot do the work or cannot be had there. */
export const toolCannotDoIt: Rule<Exchange> = {
  code: 'tool-cannot-do-it',
  severity: 'error',
  since: '0.2.0',
  title: 'The tool that a step names cannot do its work, or is not to be had.',
  procedure(procedure, report) {
    for (const work of toolWork(procedure)) {
      const better = betterTool(procedure, work);
      const slip = slipOf(procedure, work, better);
      if (slip === null) continue;
      const { use, cause, ...said } = slip;
      report({
        at: work.step,
        source: use.source,
        cause: `tool-cannot:${cause}`,
        ...said,
        data: use.form === 'asset' ? exchange(work.step, use, better) : undefined,
      });
    }
  },
  fix: exchanged,
};

function slipOf(procedure: Procedure, work: ToolWork, better: Asset | null): Slip | null {
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
    // It may be for something else in the step: read on the gauge of the station, or with a tool named in words.
    const besides = !byHand(step) || work.does === 'difference';
    if ((besides && better !== null) || step.tools.some((use) => use.form === 'words')) return null;
    const does = doWords(work);
    return {
      use: first.use,
      cause: `${first.tool.name}:${kind}`,
      message: `${capital(toolWords(first.tool))} cannot ${does} ${kind === null ? 'a size' : `a ${kind}`}.`,
      why: `${does === 'set' ? 'the joint would be tightened by feel' : 'the figure on the sheet would be a guess'}.`,
      help: `${takeOr(better, `Name a ${toolCalled(kind)}.`)}`,
    };
  }
  if (!suitable.some(({ tool }) => isAt(station, tool))) {
    return {
      use: one.use,
      cause: `${one.tool.name}:at:${station}`,
      message: `${one.tool.name} is fixed at ${stationWords(procedure, one.tool.at)}, and this step is done at ${stationWords(procedure, station)}.`,
      why: 'it shows nothing there.',
      help: `${takeOr(better, 'Do the step where the tool is, or take it off there in the shop.')}`,
    };
  }
  const missing = suitable.find(({ use }) => use.form === 'kind' && !shop.assets.some((asset) => isAsked(asset, use)));
  if (missing !== undefined) {
    return {
      use: missing.use,
      cause: `${shop.name}:${toolWords(missing.tool)}`,
      message: `Shop ${shop.name} has no ${missing.tool.kind}${missing.tool.range === null ? '' : ` for ${formatLimit(missing.tool.range)}`}.`,
      why: 'the job could name none, and the bench hand would take what lies there.',
      help: `Ask for one that the shop has${better === null ? '' : `, such as ${toolWords(better)}`}, or put it into the shop.`,
    };
  }
  const short = limits.find((judged) => !suitable.some(({ tool }) => reaches(work, judged, tool)));
  if (short === undefined) return null;
  const torque = work.does === 'set' ? aimOf(short.limit) : null;
  const setting = torque === null ? null : settingOn(step, one.tool, torque);
  const through =
    setting === null || setting === torque ? '' : `, which is ${workedOut(setting)} on the wrench with this adapter`;
  return {
    use: one.use,
    cause: `${one.tool.name}:${formatLimit(short.limit)}`,
    message: `${capital(toolWords(one.tool))} does not ${doWords(work)} ${limitWords(short)}${through}.`,
    why: 'beyond its scale it shows nothing, and forced there it is out of true for the next job.',
    help: `${takeOr(better, `Take a ${toolCalled(kind)} that holds ${limitWords(short)}.`)}`,
  };
}

/** The kind of tool that a step asks for, as if the shop had just that one. */
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
    damped: false,
    digital: false,
    length: null,
  };
}
