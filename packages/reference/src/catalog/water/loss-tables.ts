/**
 * Loss coefficients K as three handbooks print them, side by side: what a fitting is known to, not what it is.
 * `fittingK` is computed with; these are for comparison, and for fittings that Crane's list lacks.
 */
import type { Source } from '@firstfire/engine';

export interface MinorLossTable {
  readonly id: 'perry' | 'textbook' | 'epanet';
  readonly source: Source;
  /** Fitting and state → K on the velocity in the pipe. */
  readonly k: Readonly<Record<string, number>>;
}

const PERRY: MinorLossTable = {
  id: 'perry',
  source: {
    document: "Perry's Chemical Engineers' Handbook",
    at: 'Table 6-4',
    known: 'read in a public copy',
  },
  k: {
    'elbow-45': 0.35,
    'elbow-45-long': 0.2,
    'elbow-90': 0.75,
    'elbow-90-long': 0.45,
    'mitre-90': 1.3,
    'return-bend': 1.5,
    'tee-through': 0.4,
    'tee-branch': 1,
    'tee-branching': 1,
    coupling: 0.04,
    union: 0.04,
    'gate-valve': 0.17,
    'gate-valve 3/4': 0.9,
    'gate-valve 1/2': 4.5,
    'gate-valve 1/4': 24,
    'diaphragm-valve': 2.3,
    'diaphragm-valve 3/4': 2.6,
    'diaphragm-valve 1/2': 4.3,
    'diaphragm-valve 1/4': 21,
    'globe-bevel': 6,
    'globe-bevel 1/2': 9.5,
    'globe-composition': 6,
    'globe-composition 1/2': 8.5,
    'globe-plug': 9,
    'globe-plug 3/4': 13,
    'globe-plug 1/2': 36,
    'globe-plug 1/4': 112,
    'angle-valve': 2,
    'y-valve': 3,
    'swing-check': 2,
    'disk-check': 10,
    'ball-check': 70,
    'foot-valve': 15,
    'turbine-meter': 6,
  },
};

const TEXTBOOK: MinorLossTable = {
  id: 'textbook',
  source: {
    document:
      'Table of minor loss coefficients, LMNO Engineering (values of the common fluid-mechanics textbooks)',
    at: 'whole table',
    known: 'read in a public copy',
  },
  k: {
    'globe-valve': 10,
    'angle-valve': 2,
    'gate-valve': 0.15,
    'gate-valve 3/4': 0.26,
    'gate-valve 1/2': 2.1,
    'gate-valve 1/4': 17,
    'swing-check': 2,
    'elbow-90-flanged': 0.3,
    'elbow-90': 1.5,
    'elbow-90-long-flanged': 0.2,
    'elbow-90-long': 0.7,
    'elbow-45': 0.4,
    'tee-through-flanged': 0.2,
    'tee-through': 0.9,
    'tee-branch-flanged': 1,
    'tee-branch': 2,
    'return-bend-flanged': 0.2,
    'return-bend': 1.5,
  },
};

const EPANET: MinorLossTable = {
  id: 'epanet',
  source: { document: 'EPANET 2 Users Manual (EPA/600/R-00/057)', at: 'Table 3.3', known: 'from memory' },
  k: {
    'globe-valve': 10,
    'angle-valve': 5,
    'swing-check': 2.5,
    'gate-valve': 0.2,
    'elbow-90': 0.9,
    'elbow-90-medium': 0.8,
    'elbow-90-long': 0.6,
    'elbow-45': 0.4,
    'return-bend': 2.2,
    'tee-through': 0.6,
    'tee-branch': 1.8,
    'entrance-flush': 0.5,
    exit: 1,
  },
};

/** The tables, each by its source. */
export const MINOR_LOSS_TABLES: readonly MinorLossTable[] = [PERRY, TEXTBOOK, EPANET];
