/** Plane geometry: figures that a well-known geometry library holds itself to, and a land parcel of a database's manual. */
import { place, quantity } from '@firstfire/engine';
import type { Case, Suite } from '../suite.ts';

type Corners = readonly (readonly [number, number])[];

const points = (corners: Corners): place.Point[] => corners.map(([x, y]) => ({ x, y }));
const ring = (...corners: Corners): place.Drawn => ({ corners: points(corners), closed: true });
const line = (...corners: Corners): place.Drawn => ({ corners: points(corners), closed: false });

const LIBRARY = 'JTS Topology Suite, its published test cases';

const DISTANCES: readonly (readonly [id: string, a: place.Drawn, b: place.Drawn, distance: number])[] = [
  ['point to point', line([10, 10]), line([10, 0]), 10],
  ['line beside line', line([0, 0], [0, 10]), line([10, 0], [10, 10]), 10],
  ['point in polygon', line([240, 160]), ring([100, 260], [340, 180], [100, 60], [180, 160]), 0],
  [
    'lines that cross',
    line([40, 300], [280, 220], [60, 160], [140, 60]),
    line([140, 360], [260, 280], [240, 120], [120, 160]),
    0,
  ],
  [
    'polygons that overlap',
    ring([60, 260], [260, 180], [100, 60], [60, 160]),
    ring([220, 280], [120, 160], [300, 60], [360, 220]),
    0,
  ],
  [
    'polygons apart',
    ring([100, 320], [60, 120], [240, 180], [200, 260]),
    ring([420, 320], [280, 260], [400, 100]),
    71.55417527999327,
  ],
  // Printed as (9.9, 1.4) and so on, and read by that test at a precision of whole units.
  ['segments end to end', line([0, 0], [10, 1]), line([12, 2], [22, 3]), 2.23606],
  ['triangle and point', ring([200, 180], [60, 140], [60, 260]), line([140, 280]), 57.05597791103589],
  [
    'square line and point',
    line([100, 100], [200, 100], [200, 200], [100, 200], [100, 100]),
    line([10, 10]),
    127.27922061357856,
  ],
  ['segments apart', line([100, 100], [200, 200]), line([150, 121], [200, 0]), 20.506096654409877],
  [
    'square beside square',
    ring([98, 200], [200, 200], [200, 99], [98, 99]),
    ring([300, 200], [400, 200], [400, 100], [300, 100]),
    100,
  ],
];

const distances: Suite = {
  id: 'siting/jts-distances',
  area: 'siting',
  kind: 'published',
  document: LIBRARY,
  at: 'TestDistance.xml and AbstractDistanceTest; one of two ways round each',
  quantity: 'distance, plan units',
  band: { absolute: 1e-4 },
  bandBecause: 'the tolerance of the least exact of those tests',
  cases: DISTANCES.map(([id, a, b, published]) => ({
    id,
    published,
    computed: () => place.shapeDistance(b, a),
  })),
};

const CENTROIDS: readonly (readonly [id: string, corners: Corners, x: number, y: number])[] = [
  [
    'box',
    [
      [40, 160],
      [160, 160],
      [160, 40],
      [40, 40],
    ],
    100,
    100,
  ],
];

/** A hole is a ring whose area is taken away; middles add up by area. */
function middleWithHoles(outer: Corners, holes: readonly Corners[]): place.Point {
  let [area, x, y] = [0, 0, 0];
  for (const [sign, corners] of [[1, outer], ...holes.map((hole) => [-1, hole])] as [number, Corners][]) {
    const share = sign * Math.abs(place.signedArea(points(corners)));
    const middle = place.centroid(points(corners)) ?? { x: Number.NaN, y: Number.NaN };
    area += share;
    x += share * middle.x;
    y += share * middle.y;
  }
  return { x: x / area, y: y / area };
}

const BOX: Corners = [
  [0, 0],
  [0, 200],
  [200, 200],
  [200, 0],
];
const HOLED: readonly (readonly [id: string, holes: readonly Corners[], x: number, y: number])[] = [
  [
    'box with a hole',
    [
      [
        [20, 180],
        [80, 180],
        [80, 20],
        [20, 20],
      ],
    ],
    115.78947368421052,
    100,
  ],
  [
    'box with a hole in a corner',
    [
      [
        [60, 180],
        [20, 180],
        [20, 140],
        [60, 140],
      ],
    ],
    102.5,
    97.5,
  ],
  [
    'box with two holes',
    [
      [
        [60, 180],
        [20, 180],
        [20, 140],
        [60, 140],
      ],
      [
        [180, 60],
        [140, 60],
        [140, 20],
        [180, 20],
      ],
    ],
    100,
    100,
  ],
];

const centroids: Suite = {
  id: 'siting/jts-centroids',
  area: 'siting',
  kind: 'published',
  document: LIBRARY,
  at: 'TestCentroid.xml, polygons',
  quantity: 'coordinates of the middle, plan units',
  band: { absolute: 1e-9 },
  bandBecause: 'printed to all digits of a double',
  cases: [
    ...CENTROIDS.flatMap(([id, corners, x, y]) => both(id, [x, y], () => middleWithHoles(corners, []))),
    ...HOLED.flatMap(([id, holes, x, y]) => both(id, [x, y], () => middleWithHoles(BOX, holes))),
  ],
};

function both(id: string, [x, y]: readonly [number, number], middle: () => place.Point): Case[] {
  return [
    { id: `${id}, x`, published: x, computed: () => middle().x },
    { id: `${id}, y`, published: y, computed: () => middle().y },
  ];
}

const PARCEL: Corners = [
  [743238, 2967416],
  [743238, 2967450],
  [743265, 2967450],
  [743265.625, 2967416],
];

const areas: Suite = {
  id: 'siting/postgis-area',
  area: 'siting',
  kind: 'published',
  document: 'PostGIS manual, ST_Area',
  at: 'example of a parcel in Massachusetts, state plane feet',
  quantity: 'area, ft2 or m2, as each case says',
  band: { absolute: 5e-9 },
  bandBecause: 'printed to eight decimals',
  cases: [
    { id: 'parcel, ft2', published: 928.625, computed: () => Math.abs(place.signedArea(points(PARCEL))) },
    {
      id: 'parcel, m2',
      published: 86.27208552,
      computed: () => Math.abs(place.signedArea(points(PARCEL))) * quantity.FOOT ** 2,
    },
  ],
};

export const GEOMETRY_SUITES: readonly Suite[] = [distances, centroids, areas];
