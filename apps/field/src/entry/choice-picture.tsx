import type { Drawing } from './choice-pictures.ts';

/** Beside its word, which says the same. */
export function ChoicePicture({ drawing }: { readonly drawing: Drawing }) {
  return (
    <svg className="entry-drawing" viewBox="0 0 64 44" width="64" height="44" aria-hidden="true">
      {drawing.filled !== undefined && <path className="filled" d={drawing.filled} />}
      <path d={drawing.lines} />
    </svg>
  );
}
