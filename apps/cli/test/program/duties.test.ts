/** What a check prints of duties, amendments and limits that decide: what is dangerous first. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { EXAMPLES, firstfire, temporaryFolder } from './run.ts';

type Survey = Record<string, Record<string, unknown> | Record<string, unknown>[]>;

function checked(name: string, change: (survey: Survey) => void): string {
  const survey = JSON.parse(readFileSync(join(EXAMPLES, `${name}.survey.json`), 'utf8')) as Survey;
  change(survey);
  const folder = temporaryFolder();
  writeFileSync(join(folder, 's.json'), JSON.stringify(survey));
  const made = firstfire(['new', join(folder, 'j.json'), '--from', join(folder, 's.json')]);
  expect(made.error).toBe('');
  return firstfire(['check', join(folder, 'j.json')]).out.replaceAll(/\s+/g, ' ');
}

const leaking = (survey: Survey): void => {
  survey['gasSupply'] = { ...survey['gasSupply'], leaks: 'measured yes' };
};

describe('an immediate hazard', () => {
  it.each([
    ['house-pool', /No gas leak Shut the gas off now.* in writing\. \(common practice, .*not so/],
    ['winter-propane', /No gas leak Shut the gas off now.*hazard tag.*\[check the book\] not so/],
  ])('says what is owed first, by country: %s', (name, text) => {
    expect(checked(name, leaking)).toMatch(text);
  });

  it('owes nothing where there is none', () => {
    expect(checked('house-pool', () => undefined)).not.toContain('Shut the gas off now');
  });
});

describe('what stands behind a verdict', () => {
  it('is the ordinance, as entered', () => {
    expect(checked('house-pool', () => undefined)).toMatch(
      /at least 18\.0 in, found 18\.0 in.*15\.08\.030 \[local amendment, as entered\] gas\.burial-depth@s12/,
    );
  });

  it('is the limit that a heater stays under', () => {
    const small = (survey: Survey): void => {
      const [heater] = survey['heaters'] as Record<string, unknown>[];
      survey['heaters'] = [{ ...heater, input: 'nameplate 150 kBtu/h' }];
    };
    expect(checked('house-pool', small)).toMatch(
      /n\/a Inspection by the boiler inspectorate · Heater it does not count as a boiler: 150 kBtu\/h against 200 kBtu\/h/,
    );
  });
});
