/** A plate of our own: brushed frame, four rivets; and where on the machine it is found. */
import type { ReactNode } from 'react';
import type { EquipmentKind } from './library.ts';

export interface PlateFrameProps {
  readonly label: string;
  readonly children: ReactNode;
}

/** The fields stand over the drawing as text of the page, so that they grow with it. */
export function PlateFrame({ label, children }: PlateFrameProps) {
  return (
    <section className="plate-frame" aria-label={label}>
      {(['top left', 'top right', 'foot left', 'foot right'] as const).map((corner) => (
        <Rivet key={corner} corner={corner} />
      ))}
      {children}
    </section>
  );
}

function Rivet({ corner }: { readonly corner: string }) {
  return (
    <svg className={`plate-rivet ${corner}`} viewBox="0 0 16 16" width="14" height="14" aria-hidden="true">
      <circle cx="8" cy="8" r="6.5" fill="none" stroke="currentColor" strokeWidth="2" />
      <path d="M4.5 11.5 11.5 4.5" stroke="currentColor" strokeWidth="2" />
    </svg>
  );
}

/** Where the plate is: inside the door or on the side of a heater, on top of a pump's motor. */
export function PlatePlace({ kind }: { readonly kind: EquipmentKind }) {
  return (
    <svg className="plate-place" viewBox="0 0 120 110" width="120" height="110" aria-hidden="true">
      {kind === 'heaters' ? <HeaterShape /> : <PumpShape />}
    </svg>
  );
}

function HeaterShape() {
  return (
    <>
      <path className="shape" d="M18 24h66v72H18zM84 24l18-10v70l-18 12M18 24l18-10h66" />
      <path className="shape thin" d="M26 32h50v32H26zM34 104v-8m34 8v-8M26 74h20m-20 8h20" />
      <path className="mark" d="M88 44l10-5v16l-10 6zM34 38h18v12H34z" />
    </>
  );
}

function PumpShape() {
  return (
    <>
      <path className="shape" d="M10 44h30v46H10zM40 56h14v22H40zM54 42h54v50H54z" />
      <path className="shape thin" d="M18 44v-14h14v14M60 42v50m8-50v50m32-50v50M50 92h58v8H50z" />
      <path className="mark" d="M74 48h22v14H74z" />
    </>
  );
}
