/**
 * The outline of a basin at its water line, as an installer measures it.
 *
 * `length` is the direction along which depth is given. Every outline is turned into the same two things: the width
 * across at each place along the length, in pieces that integrate in closed form, and the edges that walls stand on.
 */

export interface Point {
  /** Along the length, m. */
  readonly x: number;
  /** Across, m. */
  readonly y: number;
}

export type Plan =
  | { readonly shape: 'rectangle'; readonly length: number; readonly width: number }
  | { readonly shape: 'round'; readonly diameter: number }
  /** An ellipse. */
  | { readonly shape: 'oval'; readonly length: number; readonly width: number }
  /** Straight sides with half-round ends. */
  | { readonly shape: 'stadium'; readonly length: number; readonly width: number }
  /** Two round ends of different size on an overall length. */
  | {
      readonly shape: 'kidney';
      readonly firstDiameter: number;
      readonly lastDiameter: number;
      readonly length: number;
    }
  /** A rectangle with a leg that stands out from one side, flush with the far end. */
  | {
      readonly shape: 'l';
      readonly length: number;
      readonly width: number;
      /** How far the leg stands out from the side. */
      readonly legLength: number;
      /** How wide the leg is along the side. */
      readonly legWidth: number;
    }
  | {
      readonly shape: 'polygon';
      readonly corners: readonly Point[];
      /** Direction of the length against the x axis of the corners, rad; 0 when left out. */
      readonly lengthAngle?: number;
    };

/** A stretch of the length over which the width changes evenly. */
export interface StraightPiece {
  readonly kind: 'straight';
  readonly from: number;
  readonly to: number;
  readonly widthFrom: number;
  readonly widthTo: number;
}

/** A stretch of the length over which the width is that of an ellipse about `centre`. */
export interface CurvedPiece {
  readonly kind: 'curved';
  readonly from: number;
  readonly to: number;
  readonly centre: number;
  /** Half axis along the length, m. */
  readonly halfLength: number;
  /** Half axis across, m. */
  readonly halfWidth: number;
}

export type WidthPiece = StraightPiece | CurvedPiece;

/** A straight stretch of wall; only where it stands along the length matters. */
export interface StraightEdge {
  readonly kind: 'straight';
  readonly from: number;
  readonly to: number;
  readonly length: number;
}

/** A stretch of wall on an ellipse, between two of its angles (rad, 0 at the far end of the length). */
export interface CurvedEdge {
  readonly kind: 'curved';
  readonly centre: number;
  readonly halfLength: number;
  readonly halfWidth: number;
  readonly start: number;
  readonly end: number;
}

export type Edge = StraightEdge | CurvedEdge;

export interface Outline {
  /** Overall length, m; pieces lie between 0 and this. */
  readonly length: number;
  readonly pieces: readonly WidthPiece[];
  readonly edges: readonly Edge[];
}
