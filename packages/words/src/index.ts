export { AS_PRINTED } from './as-printed.ts';
export type { Dictionary, RuleWords } from './dictionary.ts';
export { fill, type Slots, slotsOf } from './fill.ts';
export { type IssueContext, issueSentence, type Show } from './issue-sentence.ts';
export { citedText, partsOf } from './phrasebook.ts';
export { ENGLISH, LANGUAGES, type Language, wordsOf } from './say.ts';
export { type Speech, sourceText, speechOf } from './speech.ts';
export { subjectText } from './subject-text.ts';
