/** Asks the device where it is, when somebody wants that; says so when it may not or cannot. */
import { useState } from 'react';
import { useText } from '../text/use-text.tsx';
import { askDevice, type Here } from './here.ts';

export function HereButton({ onHere }: { readonly onHere: (here: Here) => void }) {
  const text = useText();
  const [state, setState] = useState<'idle' | 'asking' | 'refused'>('idle');
  const ask = (): void => {
    setState('asking');
    askDevice().then(
      (here) => {
        setState('idle');
        onHere(here);
      },
      () => setState('refused'),
    );
  };
  return (
    <button type="button" className="button plain entry-here" disabled={state === 'asking'} onClick={ask}>
      {text.phrase(state === 'idle' ? 'here' : state === 'asking' ? 'here-asking' : 'here-refused')}
    </button>
  );
}
