export { AS_PRINTED } from './as-printed.ts';
export type { Dictionary, RuleWords } from './dictionary.ts';
export {
  type FigureIn,
  figureIn,
  figureText,
  givenText,
  perCent,
  type Reader,
  type Units,
  unitFor,
  workedText,
} from './figures.ts';
export { fill, type Slots, slotsOf } from './fill.ts';
export { marginText, outcomeText, unitsOf } from './finding-text.ts';
export { type IssueContext, issueSentence, type Show } from './issue-sentence.ts';
export { citedText, partsOf } from './phrasebook.ts';
export { ENGLISH, LANGUAGES, type Language, wordsOf } from './say.ts';
export { type Speech, sourceText, speechOf } from './speech.ts';
export { subjectText } from './subject-text.ts';
