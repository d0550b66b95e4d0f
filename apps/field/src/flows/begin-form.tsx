/** The few answers a job begins with: a name, then one tap each. */
import { useState } from 'react';
import type { NewSite } from '../next/templates.ts';
import { useText } from '../text/use-text.tsx';

export type Answers = NewSite;

const START: Answers = {
  name: '',
  country: 'US',
  region: '',
  fuel: 'natural',
  basin: 'pool',
  where: 'outdoors',
};

/** Each question with its answers, as the words of a job know them. */
const QUESTIONS = [
  ['country', ['US', 'CA']],
  ['fuel', ['natural', 'propane']],
  ['basin', ['pool', 'spa', 'both']],
  ['where', ['outdoors', 'indoors']],
] as const;

export function BeginForm({ onBegin }: { readonly onBegin: (answers: Answers) => Promise<void> }) {
  const text = useText();
  const [answers, setAnswers] = useState(START);
  const [failed, setFailed] = useState(false);
  const begin = (): void => {
    onBegin({ ...answers, name: answers.name.trim(), region: answers.region.trim().toUpperCase() }).catch(
      () => setFailed(true),
    );
  };
  return (
    <form
      className="stack"
      onSubmit={(event) => {
        event.preventDefault();
        begin();
      }}
    >
      <label className="stack">
        <span>{text.phrase('job-name')}</span>
        <input
          className="text-input"
          required
          maxLength={80}
          autoComplete="off"
          value={answers.name}
          onChange={(event) => setAnswers({ ...answers, name: event.target.value })}
        />
        <span className="second">{text.phrase('job-name-help')}</span>
      </label>
      {QUESTIONS.map(([name, choices]) => (
        <Question
          key={name}
          name={name}
          choices={choices}
          chosen={answers[name]}
          onChoose={(choice) => setAnswers({ ...answers, [name]: choice })}
        />
      ))}
      <label className="begin-region">
        <span>{text.phrase('region')}</span>
        <input
          className="text-input"
          maxLength={3}
          autoComplete="off"
          autoCapitalize="characters"
          value={answers.region}
          onChange={(event) => setAnswers({ ...answers, region: event.target.value })}
        />
      </label>
      {failed && (
        <p className="notice" role="alert">
          {text.phrase('begin-failed')}
        </p>
      )}
      <button type="submit" className="button main">
        {text.phrase('begin')}
      </button>
    </form>
  );
}

interface QuestionProps {
  readonly name: string;
  readonly choices: readonly string[];
  readonly chosen: string;
  readonly onChoose: (choice: string) => void;
}

function Question({ name, choices, chosen, onChoose }: QuestionProps) {
  const text = useText();
  return (
    <fieldset className="how">
      <legend>{text.phrase(`question.${name}`)}</legend>
      {choices.map((choice) => (
        <label key={choice} className={choice === chosen ? 'chosen' : ''}>
          <input type="radio" name={name} checked={choice === chosen} onChange={() => onChoose(choice)} />
          {text.phrase(`answer.${choice}`)}
        </label>
      ))}
    </fieldset>
  );
}
