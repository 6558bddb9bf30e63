import { useState } from 'preact/hooks';
import { nameKind, OUTCOME_WORDS } from '../../../shared/determination/duty-words.js';
import type { ExpectedDuty } from '../../../shared/law/law-case.js';
import { packCode } from '../../../shared/law/pack-code.js';
import type { RulePack } from '../../../shared/law/rule-pack.js';
import { Button } from '../look/button.js';
import { Loading, Note } from '../look/notes.js';
import { Section } from '../look/section.js';
import { Sign } from '../look/sign.js';
import { tellInstant } from '../look/tell-instant.js';
import { lawPages } from '../words/law-pages.js';
import { tryCases, type TriedCase } from './try-cases.js';

const say = lawPages.cases;

/** The cases beside a pack, tried when they are opened; what comes out otherwise is said first. */
export function LawCases({ pack, packs }: { pack: RulePack; packs: readonly RulePack[] }) {
  const [tried, setTried] = useState<readonly TriedCase[] | 'trying' | 'no-signal' | 'gone' | null>(null);
  const begin = (): void => {
    setTried('trying');
    tryCases(packCode(pack), packs).then(setTried, (error: unknown) =>
      setTried(error instanceof TypeError ? 'no-signal' : 'gone'),
    );
  };
  return (
    <Section title={say.title}>
      <details onToggle={({ currentTarget }) => currentTarget.open && tried === null && begin()}>
        <summary>{say.about}</summary>
        {tried === 'trying' && <Loading what={say.trying} />}
        {(tried === 'no-signal' || tried === 'gone') && (
          <Note kind="error">
            <p>{tried === 'gone' ? say.gone : say.noSignal}</p>
            <Button onPress={begin}>{say.again}</Button>
          </Note>
        )}
        {typeof tried === 'object' && tried !== null && <Tried tried={tried} />}
      </details>
    </Section>
  );
}

function Tried({ tried }: { tried: readonly TriedCase[] }) {
  const otherwise = tried.filter(({ asExpected }) => !asExpected);
  const duties = [...new Set(tried.map(({ law }) => law.duty))];
  return (
    <>
      {otherwise.length === 0 ? (
        <Note kind="saved">{say.all(tried.length)}</Note>
      ) : (
        <Note kind="error">{say.some(otherwise.length, tried.length)}</Note>
      )}
      {duties.map((duty) => (
        <div key={duty} class="law-points">
          <h3>{nameKind(duty.slice(duty.indexOf('/') + 1))}</h3>
          <ul class="law-cases">
            {tried
              .filter(({ law }) => law.duty === duty)
              .map((one) => (
                <CaseLine key={one.law.name} tried={one} />
              ))}
          </ul>
        </div>
      ))}
    </>
  );
}

function CaseLine({ tried: { law, duty, asExpected } }: { tried: TriedCase }) {
  const outcome = duty?.outcome ?? 'not-required';
  return (
    <li>
      <span>{law.name}</span>
      <strong>
        <Sign of={outcome} />
        {tellAnswer(duty ?? { outcome }, law.facts.place.timeZone)}
      </strong>
      {!asExpected && (
        <span class="law-mark">{say.expected(tellAnswer(law.expect, law.facts.place.timeZone))}</span>
      )}
    </li>
  );
}

function tellAnswer(
  { outcome = 'undetermined', dueAt, dueAtIfRequired, immediate }: Omit<ExpectedDuty, 'questions'>,
  zone?: string,
): string {
  const at = dueAt ?? dueAtIfRequired ?? null;
  const words = OUTCOME_WORDS[outcome];
  if (at === null || outcome === 'not-required') return words;
  const told = tellInstant(at, zone);
  const clock = (dueAt ?? null) === null ? say.dueIf(told) : say.due(told);
  return `${words}, ${immediate === true ? `${say.atOnce}, ` : ''}${clock}`;
}
