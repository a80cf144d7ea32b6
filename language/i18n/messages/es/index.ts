import type { Bundle } from '../bundle.ts';
import { analysis } from './analysis.ts';
import { calculator } from './calculator.ts';
import { cli } from './cli.ts';
import { config } from './config.ts';
import { db } from './db.ts';
import { diagnostics } from './diagnostics.ts';
import { drafting } from './drafting.ts';
import { engineering } from './engineering.ts';
import { family } from './family.ts';
import { gates } from './gates.ts';
import { hazards } from './hazards.ts';
import { ide } from './ide.ts';
import { language } from './language.ts';
import { mcp } from './mcp.ts';
import { order } from './order.ts';
import { protection } from './protection.ts';
import { quantities } from './quantities.ts';
import { recommendations } from './recommendations.ts';
import { semantics } from './semantics.ts';
import { specifications } from './specifications.ts';
import { states } from './states.ts';
import { syntax } from './syntax.ts';
import { terms } from './terms.ts';
import { titles } from './titles.ts';
import { tools } from './tools.ts';
import { traceability } from './traceability.ts';
import { verbs } from './verbs.ts';

/** What is said, in Spanish. */
export const es: Bundle = {
  ...analysis,
  ...cli,
  ...config,
  ...db,
  ...diagnostics,
  ...drafting,
  ...engineering,
  ...family,
  ...gates,
  ...hazards,
  ...ide,
  ...language,
  ...order,
  ...protection,
  ...quantities,
  ...semantics,
  ...specifications,
  ...syntax,
  ...terms,
  ...tools,
  ...traceability,
  ...calculator,
  ...mcp,
  ...recommendations,
  ...states,
  ...titles,
  ...verbs,
};
