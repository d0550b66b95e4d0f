export type { Dictionary, RuleWords } from './dictionary.ts';
export { fill, type Slots, slotsOf } from './fill.ts';
export { type IssueContext, issueSentence, type Show } from './issue-sentence.ts';
export { LANGUAGES, type Language, wordsOf } from './say.ts';
export { subjectText } from './subject-text.ts';
