/** What one study works out and the next may use: for whoever studies one job again and again while it is edited. */
import { KeptFindings } from '@firstfire/reference';
import { KeptModels } from '../plant/kept-models.ts';

export class KeptStudy {
  readonly models = new KeptModels();
  /** A finding that stands is the same object, so that a screen need not draw it anew. */
  readonly findings = new KeptFindings();
}
