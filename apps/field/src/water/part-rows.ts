/** The loop as a list, in the order in which the water meets its parts: what each shows, and the reading behind it. */
import type { WaterPart, WaterPicture, WaterRunShown, WaterStateShown } from '@firstfire/job';
import type { AppText } from '../text/app-text.ts';
import {
  flowText,
  headText,
  lossText,
  pressureText,
  riseText,
  rpmText,
  shareText,
  temperatureText,
  velocityText,
} from './figures.ts';
import { partName } from './names.ts';

export interface PartRow {
  readonly id: string;
  readonly name: string;
  /** Figures, the weightiest first. */
  readonly figures: readonly string[];
  readonly missing: readonly string[];
  /** What is read of it. */
  readonly readings: readonly string[];
}

/** What a row goes by: picture and list name the same part alike. */
export function rowId(collection: string, id: string): string {
  return `${collection} ${id}`;
}

interface Shown {
  readonly picture: WaterPicture;
  readonly state: WaterStateShown | undefined;
  readonly text: AppText;
}

export function partRows(shown: Shown): readonly PartRow[] {
  const { picture } = shown;
  const runs = (...roles: readonly string[]): PartRow[] =>
    picture.runs.filter(({ role }) => roles.includes(role)).map((run) => runRow(shown, run));
  return [
    ...picture.basins.map((basin) => basinRow(shown, basin)),
    ...runs('suction'),
    pumpRow(shown),
    ...runs('pump-to-filter'),
    filterRow(shown),
    ...runs('filter-to-heater', 'supply-header', 'heater-branch'),
    ...picture.heaters.map((heater) => heaterRow(shown, heater)),
    ...(picture.heaters.length > 0 && picture.bypass.kind !== 'none' ? [bypassRow(shown)] : []),
    ...runs('return-header', 'return', ''),
  ];
}

interface Row {
  readonly collection: string;
  readonly fields: readonly string[];
  readonly name: string;
  readonly figures: readonly string[];
}

function row(
  { id, missing }: Pick<WaterPart, 'id' | 'missing'>,
  { collection, fields, name, figures }: Row,
): PartRow {
  return {
    id: rowId(collection, id),
    name,
    figures: figures.filter((one) => one !== ''),
    missing,
    readings: fields.map((field) => `${collection}/${id}/${field}`),
  };
}

function basinRow({ state, text }: Shown, basin: WaterPicture['basins'][number]): PartRow {
  const temperature = state?.basin === basin.id ? state.flowing?.temperatures.basin : undefined;
  return {
    ...row(basin, {
      collection: 'basins',
      fields: ['name'],
      name: partName(basin, 'basins', text),
      figures: [temperature === undefined ? '' : temperatureText(temperature, text)],
    }),
    readings: [
      'waterLoop/-/waterTemperature',
      `basins/${basin.id}/name`,
      ...(basin.level === 0 ? [] : ['waterLoop/-/spillwayHeight']),
    ],
  };
}

function runRow({ state, text }: Shown, run: WaterRunShown): PartRow {
  const inFlow = state?.flowing?.runs.get(run.id);
  const runs = inFlow !== undefined && inFlow.flow > 1e-7;
  const figures = runs
    ? [flowText(inFlow.flow, text), velocityText(inFlow.velocity, text)]
    : [inFlow === undefined ? '' : text.phrase('water.no-flow')];
  return row(run, {
    collection: 'waterRuns',
    fields: ['material', 'size', 'length', 'fittings'],
    name: run.name === '' && run.role !== '' ? text.choice(run.role) : partName(run, 'waterRuns', text),
    figures: [...figures, run.size === '' ? '' : text.phrase('water.size', { size: run.size })],
  });
}

function pumpRow({ picture, state, text }: Shown): PartRow {
  const flowing = state?.flowing;
  const speed = picture.speeds.find(({ id }) => id === state?.speed)?.speed;
  return row(picture.pump, {
    collection: 'pumps',
    fields: ['curve', 'speedFull', 'efficiency'],
    name: partName(picture.pump, 'pumps', text),
    figures: flowing
      ? [
          `+${headText(flowing.pumpHead, text)}`,
          text.phrase('water.from-to', {
            from: pressureText(flowing.pressures.pumpInlet, text),
            to: pressureText(flowing.pressures.pumpOutlet, text),
          }),
          rpmText(speed, text),
        ]
      : [],
  });
}

function filterRow({ picture, state, text }: Shown): PartRow {
  const pressures = state?.flowing?.pressures;
  return row(picture.filter, {
    collection: 'filters',
    fields: ['kind', 'cleanLoss', 'cleanFlow', 'dirtyRise', 'gaugeNow'],
    name: partName(picture.filter, 'filters', text),
    figures: pressures
      ? [
          lossText(pressures.filterInlet - pressures.filterOutlet, text),
          text.phrase('water.from-to', {
            from: pressureText(pressures.filterInlet, text),
            to: pressureText(pressures.filterOutlet, text),
          }),
        ]
      : [],
  });
}

function heaterRow({ picture, state, text }: Shown, heater: WaterPart): PartRow {
  const inFlow = state?.flowing?.heaters.find(({ id }) => id === heater.id);
  const shown = picture.heaters.find(({ id }) => id === heater.id);
  const band =
    shown?.least === undefined || shown.most === undefined
      ? ''
      : text.phrase('water.band', { low: flowText(shown.least, text), high: flowText(shown.most, text) });
  const warm = inFlow?.burns && inFlow.rise !== undefined ? riseText(inFlow.rise, text) : '';
  return row(heater, {
    collection: 'heaters',
    fields: ['flowLeast', 'flowGreatest', 'loss'],
    name: partName(heater, 'heaters', text),
    figures: inFlow
      ? [flowText(inFlow.flow, text), warm, pressureText(inFlow.inletPressure, text), band]
      : [band],
  });
}

function bypassRow({ picture, state, text }: Shown): PartRow {
  const { opening, missing } = picture.bypass;
  const flow = state?.flowing?.bypass;
  return row(
    { id: '-', missing },
    {
      collection: 'waterLoop',
      fields: ['bypass', 'bypassOpening', 'bypassCv'],
      name: text.phrase('water.bypass'),
      figures: [
        opening === undefined ? '' : shareText(opening, text),
        flow === undefined ? '' : flowText(flow, text),
      ],
    },
  );
}
