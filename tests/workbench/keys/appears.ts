/** What each command brings up: waited for by the tests that press it, wherever it is offered. */
import type { Page } from 'playwright-core';
import { untilSaid } from './hands.ts';

/** Waits until it is there. */
type Appears = (page: Page) => Promise<unknown>;

const there =
  (selector: string, hasText?: string | RegExp): Appears =>
  (page) =>
    page
      .locator(selector, hasText === undefined ? {} : { hasText })
      .first()
      .waitFor();

export const appears: Readonly<Record<string, Appears>> = {
  'handtight.newProcedure': there('.quick-input-title', 'what is rebuilt?'),
  'handtight.samples': there('.quick-input-title', 'A folder for the samples'),
  'handtight.preview': there('.tab', 'Sheet: '),
  'handtight.specs': there('.tab', 'Specifications: '),
  'handtight.drawing': there('.tab', 'Drawing: '),
  'handtight.showState': there('.part.sidebar .title-label', /State at the Cursor/iu),
  'handtight.print': (page) => untilSaid(page, /^Printed to traveler\//u),
  'handtight.explain': there('.quick-input-widget input[placeholder="Which rule should be explained?"]'),
  'handtight.tour': there('.gettingStartedContainer', 'Write a rebuild procedure'),
  'handtight.restartServer': there('.statusbar', 'the language server was restarted'),
  'handtight.showOutput': there('.panel .output-view'),
  'workbench.actions.view.problems': there('.markers-panel'),
};
