/** One appliance with a draught hood on a single-wall metal vent. One group: most. The whole table was read. */
import { type PrintedVentTable, ventRows } from './vent-rows.ts';

/** Complete. */
export const SINGLE_WALL: PrintedVentTable = {
  id: '504.2(5)',
  source: {
    document: 'International Fuel Gas Code',
    at: 'Table 504.2(5), as printed in the 2018 North Carolina code and the 2022 New York City code',
    known: 'read in a public copy',
  },
  inches: [3, 4, 5, 6, 7, 8, 10, 12],
  straight: true,
  rows: ventRows(`
6 0 rrrrrrrr | 39 70 116 170 232 312 500 750
6 2 rrrrrrrr | 31 55 94 141 194 260 415 620
6 5 rrrrrrrr | 28 51 88 128 177 242 390 600
8 0 rrrrrrrr | 42 76 126 185 252 340 542 815
8 2 rrrrrrrr | 32 61 102 154 210 284 451 680
8 5 rrrrrrrr | 29 56 95 141 194 264 430 648
8 10 rrrrrrrr | 24 49 86 131 180 250 406 625
10 0 rrrrrrrr | 45 84 138 202 279 372 606 912
10 2 rrrrrrrr | 35 67 111 168 233 311 505 760
10 5 rrrrrrrr | 32 61 104 153 215 289 480 724
10 10 rrrrrrrr | 27 54 94 143 200 274 455 700
10 15 rrrrrrrr | - 46 84 130 186 258 432 666
15 0 rrrrrrrr | 49 91 151 223 312 420 684 1040
15 2 rrrrrrrr | 39 72 122 186 260 350 570 865
15 5 rrrrrrrr | 35 67 110 170 240 325 540 825
15 10 rrrrrrrr | 30 58 103 158 223 308 514 795
15 15 rrrrrrrr | - 50 93 144 207 291 488 760
15 20 rrrrrrrr | - - 82 132 195 273 466 726
20 0 rrrrrrrr | 53 101 163 252 342 470 770 1190
20 2 rrrrrrrr | 42 80 136 210 286 392 641 990
20 5 rrrrrrrr | 38 74 123 192 264 364 610 945
20 10 rrrrrrrr | 32 65 115 178 246 345 571 910
20 15 rrrrrrrr | - 55 104 163 228 326 550 870
20 20 rrrrrrrr | - - 91 149 214 306 525 832
30 0 rrrrrrrr | 56 108 183 276 384 529 878 1370
30 2 rrrrrrrr | 44 84 148 230 320 441 730 1140
30 5 rrrrrrrr | - 78 137 210 296 410 694 1080
30 10 rrrrrrrr | - 68 125 196 274 388 656 1050
30 15 rrrrrrrr | - - 113 177 258 366 625 1000
30 20 rrrrrrrr | - - 99 163 240 344 596 960
30 30 rrrrrrrr | - - - - 192 295 540 890
50 0 rrrrrrrr | - 120 210 310 443 590 980 1550
50 2 rrrrrrrr | - 95 171 260 370 492 820 1290
50 5 rrrrrrrr | - - 159 234 342 474 780 1230
50 10 rrrrrrrr | - - 146 221 318 456 730 1190
50 15 rrrrrrrr | - - - 200 292 407 705 1130
50 20 rrrrrrrr | - - - 185 276 384 670 1080
50 30 rrrrrrrr | - - - - 222 330 605 1010
`),
};
