/** The photos of a reading, large; each can be deleted. */
import { useText } from '../text/use-text.tsx';
import { Sheet } from './sheet.tsx';
import type { PhotosAt } from './use-photos.ts';

export interface PhotoSheetProps {
  readonly photos: PhotosAt;
  readonly onMore: () => void;
  readonly onClose: () => void;
}

export function PhotoSheet({ photos, onMore, onClose }: PhotoSheetProps) {
  const text = useText();
  return (
    <Sheet title={text.phrase('photos', { count: photos.shown.length })} onClose={onClose}>
      <ul className="entry-photos">
        {photos.shown.map(({ key, url }, i) => (
          <li key={key}>
            <img src={url} alt={text.phrase('photo-number', { number: i + 1 })} />
            <button type="button" className="button plain" onClick={() => photos.remove(key)}>
              {text.phrase('photo-remove')}
            </button>
          </li>
        ))}
      </ul>
      {photos.isRefused && <p className="notice">{text.phrase('photo-refused')}</p>}
      <button type="button" className="button" onClick={onMore}>
        {text.phrase('photo-more')}
      </button>
      <p className="second">{text.phrase('photo-help')}</p>
    </Sheet>
  );
}
