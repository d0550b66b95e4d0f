import { STATUS } from '../problem.ts';
import type { World } from '../world.ts';

const TEXT = `firstfire — checks the whole job of a gas-fired pool or spa heater

  firstfire check JOB [--line LINE] [--units us|si|mixed] [--json] [--working FINDING]
                 [--variant NAME]
      findings by line, worst margin first; --working shows how a figure was made
  firstfire year JOB [--epw FILE] [--units us|si|mixed] [--json]
      fuel, cost and carbon of a typical year by the hour, with the cover and without
  firstfire editions JOB --from EDITION --to EDITION    what another edition would change
  firstfire recheck DIR [--edition EDITION]   every job file below a folder, a row of CSV each
  firstfire sum                        lists every sum
  firstfire sum NAME                   describes one
  firstfire sum NAME name=value ...    works one case:  firstfire sum static-head 'height=12 ft'
  firstfire sum NAME --csv FILE|-      works a table; --out 'capacity [ft3/h]' chooses outputs
  firstfire new FILE [--from SURVEY] [--name NAME]   begins a job, blank or from a written survey
  firstfire schema                     JSON Schema of a job file

Exit status: 0 nothing fails, 1 something fails, 2 bad use or unreadable, 3 something is unknown.

For qualified people. The maker's instructions, the codes in force at the address and licensed practice
come first.`;

export function help(_args: readonly string[], world: World): number {
  world.out(TEXT);
  return STATUS.good;
}
