/** Whole declarations with gaps to fill, offered where one may begin and nowhere else. */
import { type Said, say } from '../../say/say.ts';

/** One snippet, in the syntax of the protocol. */
export interface Snippet {
  readonly name: Said;
  /** The word that is typed for it. */
  readonly prefix: string;
  readonly description: Said;
  readonly body: string;
}

export const snippets: readonly Snippet[] = [
  {
    name: say`Shop`,
    prefix: 'shop',
    description: say`A shop: stations, wrenches, gauges, tools, fluids, stock`,
    body: `shop \${1:bench-one} "\${2:Bench one}" {
  station \${3:strip}  "\${4:Strip-down bench}"  dirty
  station \${5:build}  "\${6:Clean room}"  clean
  station \${7:tester} "\${8:Nozzle tester}"  clean, pressure

  wrench \${9:TW-80}  range \${10:16..80 N·m}  within \${11:4} %  due \${12:2027-12-31}
  gauge  \${13:PG-400}  range \${14:0..400 bar}  class \${15:0.25}  graduated \${16:1 bar}  at $7  due \${17:2027-12-31}
  fluid  \${18:cal-oil}  "\${19:Calibration fluid}"  test-oil
  unless stated torque \${20:±10 %} source "\${21:Shop standard}"
  $0
}`,
  },
  {
    name: say`Family`,
    prefix: 'family',
    description: say`A family of units: parts, faces, ports, joints, what proves them`,
    body: `family \${1:name} "\${2:What it is}" {
  part \${3:body}  "\${4:Body}"  held in "\${5:holding fixture}"
  part \${6:nozzle}  "\${7:Nozzle}"  on $3  located by "\${8:two dowels}"
  part \${9:nut}  "\${10:Nut}"  on $3  holds $6

  face $3.\${11:end} lapped  meets $6.\${12:top}  guarded by $9
  port \${13:inlet} on $3
  joint $9 to $3 "\${14:thread}"
  proven by \${15:opening}
  $0
}`,
  },
  {
    name: say`Procedure`,
    prefix: 'procedure',
    description: say`A procedure for a family at a shop`,
    body: `procedure \${1:name} "\${2:Rebuild and set}" for \${3:family} at \${4:shop}
  revision \${5:A}  written by "\${6:name}"
{
  spec \${7:opening}  pressure  \${8:250 bar +8 -0}, in service at least \${9:200 bar}  source "\${10:where it is from}"
  number \${11:A-1}

  stage receive at \${12:strip} {
    receive
    tag
    $0
  }
}`,
  },
  {
    name: say`Part number`,
    prefix: 'number',
    description: say`A part number with the specs that differ`,
    body: `number \${1:A-2} { \${2:opening} \${3:220 bar +8 -0}, in service at least \${4:175 bar} }`,
  },
  {
    name: say`Spec`,
    prefix: 'spec',
    description: say`A limit with its source`,
    body: `spec \${1:name}  \${2|pressure,torque,length,force,angle,time,rate|}  \${3:60 N·m ±5}  source "\${4:where it is from}"`,
  },
  {
    name: say`Stage`,
    prefix: 'stage',
    description: say`Steps done at one station`,
    body: `stage \${1:name} at \${2:station} {
  $0
}`,
  },
  {
    name: say`Test`,
    prefix: 'test',
    description: say`A test with a reading, its limit and what to do when it fails`,
    body: `test \${1:opening}  read \${2|pressure,time,length,volume,force,angle|} within \${3:opening}  on fail \${4:reshim} (\${5:3} times)`,
  },
  {
    name: say`Check`,
    prefix: 'check',
    description: say`A look at a face or a part, with what is good enough`,
    body: `check \${1:body.end}  reuse if "\${2:bright, even, no line}"  reject if "\${3:scored or pitted}"`,
  },
  {
    name: say`Repair`,
    prefix: 'repair',
    description: say`What is done when a gate fails, before it is tried again`,
    body: `repair \${1:name} {
  \${2:relieve}
  $0
}`,
  },
  {
    name: say`Job`,
    prefix: 'job',
    description: say`A work order: the set of units that came in`,
    body: `job \${1:2207} "\${2:Set of six}" of \${3:procedure} revision \${4:A} at \${5:shop}
  customer "\${6:name}"  received \${7:2026-01-31}
{
  unit 1 number \${8:A-1} serial \${9:0001}
  $0
}`,
  },
];
