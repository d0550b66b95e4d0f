/**
 * The common part of a type B vent that serves several Category I appliances, type B connectors. Groups: all with a fan;
 * some with a fan and some without; none with a fan. Combined input.
 *
 * Of the recalled cells two differ from a 2022 city code: 423 for 9 in at 20 ft without a fan, and 7 in at 100 ft of
 * the single-wall table, which is not here.
 */
import { type PrintedVentTable, ventRows } from './vent-rows.ts';

/** 4 to 10 in. */
export const COMMON_VENT: PrintedVentTable = {
  id: '504.3(1)',
  source: {
    document: 'International Fuel Gas Code',
    at: 'Table 504.3(1), common vent',
    known: 'from memory',
  },
  inches: [4, 5, 6, 7, 8, 9, 10],
  straight: false,
  rows: ventRows(`
6 0 mfffmmm | 92 140 204 309 404 547 672 | 81 116 161 248 314 434 520 | 65 103 147 200 260 335 410
8 0 mmfmmmm | 101 155 224 339 444 602 740 | 90 129 178 275 348 480 577 | 73 114 163 223 290 378 465
10 0 fmmmmmm | 110 169 243 367 477 649 800 | 97 141 194 299 377 522 627 | 79 124 178 242 315 405 495
15 0 mrrrrrr | 125 195 283 427 556 753 924 | 112 164 228 352 444 612 733 | 91 144 206 280 365 465 565
20 0 rrrrrfr | 136 215 314 475 621 842 1035 | 123 183 255 394 499 688 826 | 102 160 229 310 405 523 640
30 0 mmmmmmm | 152 244 361 547 720 979 1209 | 138 210 297 459 585 808 975 | 118 185 266 360 470 605 740
50 0 mmmmmmm | 167 279 421 641 854 1164 1451 | 153 244 353 547 706 977 1188 | 134 214 310 423 550 705 860
100 0 mmmmmmm | 175 311 489 751 1025 1408 1784 | 163 277 421 658 873 1215 1502 | - - - 479 625 800 975
`),
};

/** 12 to 18 in, with a fan-assisted appliance among them; the last group was not legible. */
export const COMMON_VENT_LARGE: PrintedVentTable = {
  id: '504.3(1).large',
  source: {
    document: 'International Fuel Gas Code',
    at: 'Table 504.3(1), common vent, 12 to 18 in, as printed in the 2013 California codes',
    known: 'read in a public copy',
  },
  inches: [12, 14, 16, 18],
  straight: false,
  rows: ventRows(`
6 0 ffff | 900 1284 1735 2253 | 696 990 1336 1732 | - - - -
8 0 ffff | 994 1423 1927 2507 | 773 1103 1491 1936 | - - - -
10 0 ffff | 1076 1542 2093 2727 | 841 1200 1625 2113 | - - - -
15 0 ffff | 1247 1794 2440 3184 | 986 1410 1910 2484 | - - - -
20 0 ffff | 1405 2006 2722 3561 | 1116 1588 2147 2798 | - - - -
30 0 ffff | 1658 2373 3220 4197 | 1327 1892 2558 3326 | - - - -
50 0 ffff | 2024 2911 3964 5184 | 1640 2347 3183 4149 | - - - -
100 0 ffff | 2569 3732 5125 6749 | 2131 3076 4202 5509 | - - - -
`),
};
