/** Takes or chooses a photo, the keypad staying open; those taken are beside it, opened large by a tap. */
import { useRef, useState } from 'react';
import { useText } from '../text/use-text.tsx';
import { PhotoSheet } from './photo-sheet.tsx';
import type { PhotosAt } from './use-photos.ts';

export type { PhotosAt } from './use-photos.ts';

export function PhotoButton({ photos }: { readonly photos: PhotosAt }) {
  const text = useText();
  const input = useRef<HTMLInputElement>(null);
  const [isOpen, setOpen] = useState(false);
  const last = photos.shown.at(-1);
  return (
    <>
      <input
        ref={input}
        type="file"
        accept="image/*"
        hidden
        onChange={(event) => {
          const [file] = event.target.files ?? [];
          event.target.value = '';
          if (file !== undefined) photos.add(file);
        }}
      />
      <button
        type="button"
        className={photos.isRefused ? 'entry-how-button photo refused' : 'entry-how-button photo'}
        onClick={() => (last === undefined ? input.current?.click() : setOpen(true))}
      >
        {last === undefined ? <Camera /> : <img src={last.url} alt="" />}
        <span>
          {photos.shown.length > 0
            ? text.phrase('photos', { count: photos.shown.length })
            : text.phrase(photos.isRefused ? 'photo-refused' : 'photo')}
        </span>
      </button>
      {isOpen && (
        <PhotoSheet photos={photos} onMore={() => input.current?.click()} onClose={() => setOpen(false)} />
      )}
    </>
  );
}

function Camera() {
  return (
    <svg viewBox="0 0 32 24" width="30" height="22" aria-hidden="true">
      <path
        d="M3 6h6l2-4h10l2 4h6v16H3zM16 9a5 5 0 1 0 0 10 5 5 0 0 0 0-10z"
        fill="none"
        stroke="currentColor"
        strokeWidth="2"
        strokeLinejoin="round"
      />
    </svg>
  );
}
