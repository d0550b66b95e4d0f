/** Where the parts of a pad stand in its network, looked up once: they are read after every solve. */
import type { Network } from '../../numerics/index.ts';
import { type Layout, type LinkPart, STATIONS, type Station } from './layout.ts';

export interface PadPlaces {
  /** Links; −1 where there is none. */
  readonly pump: number;
  readonly stopped: number;
  readonly bypass: number;
  /** Links that are the ports of the branches. */
  readonly ports: readonly number[];
  /** Node of each station. */
  readonly station: Readonly<Record<Station, number>>;
  /** Nodes of the taps, and the link of the heater itself. */
  readonly heaters: readonly { readonly inlet: number; readonly outlet: number; readonly link: number }[];
}

/** The places of a layout in the network that was built of it. */
export function placesOf({ parts, stationNode, heaterNodes }: Layout, network: Network): PadPlaces {
  const find = (is: (part: LinkPart) => boolean): number => parts.findIndex(is);
  const node = (id: string): number => network.nodeIndex(id);
  const station = {} as Record<Station, number>;
  for (const name of STATIONS) station[name] = node(stationNode[name]);
  const ports: number[] = [];
  parts.forEach((part, link) => {
    if (part.part === 'port') ports.push(link);
  });
  return {
    pump: find((part) => part.part === 'pump' && !part.stopped),
    stopped: find((part) => part.part === 'pump' && part.stopped),
    bypass: find((part) => part.part === 'bypass-valve'),
    ports,
    station,
    heaters: heaterNodes.map(({ inlet, outlet, link }) => ({
      inlet: node(inlet),
      outlet: node(outlet),
      link,
    })),
  };
}
