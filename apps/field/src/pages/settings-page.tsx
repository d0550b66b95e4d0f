/** How this device speaks: language, number format, units, daylight or dark; three separate choices. */
import { LANGUAGES } from '@firstfire/words';
import { type Settings, settings } from '../settings/settings.ts';
import { useSignal } from '../store/use-signal.ts';
import { useText } from '../text/use-text.tsx';
import { BackLink } from '../ui/back-link.tsx';

/** Each language in its own name, so that it can be found by who does not read the others. */
const NAMES: Readonly<Record<string, string>> = { en: 'English', es: 'Español', fr: 'Français' };

/** Places a language is written for: they decide the marks of numbers. */
const PLACES: Readonly<Record<string, readonly string[]>> = {
  en: ['en-US', 'en-CA'],
  es: ['es-US', 'es-MX', 'es-ES'],
  fr: ['fr-CA', 'fr-FR'],
};

const change = (some: Partial<Settings>): void => settings.set({ ...settings.get(), ...some });

export default function SettingsPage() {
  const text = useText();
  const { locale, system, theme } = useSignal(settings);
  const language = locale.split('-')[0] ?? 'en';
  return (
    <main className="page narrow">
      <BackLink href="/" />
      <h1>{text.phrase('settings')}</h1>
      <Choice
        name="language"
        legend={text.phrase('settings.language')}
        choices={LANGUAGES.map((one) => [one, NAMES[one] ?? one])}
        chosen={language}
        onChoose={(one) => change({ locale: PLACES[one]?.[0] ?? one })}
      />
      <Choice
        name="numbers"
        legend={text.phrase('settings.numbers')}
        choices={(PLACES[language] ?? [locale]).map((one) => [one, sample(one)])}
        chosen={locale}
        onChoose={(one) => change({ locale: one })}
      />
      <Choice
        name="units"
        legend={text.phrase('settings.units')}
        choices={(['us', 'si', 'mixed'] as const).map((one) => [one, text.phrase(`units.${one}`)])}
        chosen={system}
        onChoose={(one) => change({ system: one as Settings['system'] })}
      />
      <Choice
        name="theme"
        legend={text.phrase('settings.theme')}
        choices={(['auto', 'light', 'dark'] as const).map((one) => [one, text.phrase(`theme.${one}`)])}
        chosen={theme}
        onChoose={(one) => change({ theme: one as Settings['theme'] })}
      />
    </main>
  );
}

/** A number as the place writes it says more than its name. */
function sample(locale: string): string {
  return `${new Intl.NumberFormat(locale, { minimumFractionDigits: 1 }).format(1234.5)} · ${locale.slice(3)}`;
}

interface ChoiceProps {
  readonly name: string;
  readonly legend: string;
  readonly choices: readonly (readonly [value: string, label: string])[];
  readonly chosen: string;
  readonly onChoose: (value: string) => void;
}

function Choice({ name, legend, choices, chosen, onChoose }: ChoiceProps) {
  return (
    <fieldset className="how">
      <legend>{legend}</legend>
      {choices.map(([value, label]) => (
        <label key={value} className={value === chosen ? 'chosen' : ''}>
          <input type="radio" name={name} checked={value === chosen} onChange={() => onChoose(value)} />
          {label}
        </label>
      ))}
    </fieldset>
  );
}
