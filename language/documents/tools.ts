import type { Words } from '../i18n/index.ts';
import type { Step, ToolUse } from '../model/procedure.ts';
import type { Asset, AssetKind } from '../model/shop.ts';
import { limitText } from '../quantities/index.ts';
import type { ObjectWords } from './names.ts';

/** `TW-80`; a kind of tool with its range; or the author's words. */
export function toolWords({ words }: ObjectWords, tool: ToolUse): string {
  const { tools, wording, quantity } = words;
  switch (tool.form) {
    case 'asset': {
      // Its range is on the front.
      const { adapter } = tool;
      if (adapter === null) return tool.name;
      return `${tool.name} ${adapter.angle === null ? tools.adapter({ length: quantity(adapter.length) }) : tools.adapterAt({ length: quantity(adapter.length), angle: quantity(adapter.angle) })}`;
    }
    case 'kind': {
      const name = tools.called[tool.kind];
      return tool.range === null ? name : `${name}, ${limitText(tool.range, wording)}`;
    }
    case 'words':
      return tool.text;
  }
}

/** What a reading is taken with: air or vacuum, and the author's own words. */
export function conditionsOf({ facts: { gases } }: Words, step: Step): string[] {
  if (!('conditions' in step)) return [];
  return [...(step.gas === null ? [] : [gases[step.gas]]), ...step.conditions];
}

/** What a tool is called: by the shop, else by its kind. */
export function assetWords(asset: Asset, kinds: Readonly<Record<AssetKind, string>>): string {
  return asset.title === asset.name ? kinds[asset.kind] : asset.title;
}

/** `within 4 %, class 0.25, marks 1 bar`, as far as the shop says. */
export function accuracyWords({ number, tools, quantity }: Words, asset: Asset): string {
  return [
    asset.within === null ? null : tools.within({ error: quantity(asset.within) }),
    asset.accuracyClass === null ? null : tools.class({ class: number(asset.accuracyClass) }),
    asset.graduated === null ? null : tools.marks({ mark: quantity(asset.graduated) }),
    asset.digital ? tools.digital : null,
    asset.damped ? tools.damped : null,
  ]
    .filter((word) => word !== null)
    .join(', ');
}
