import { nameJurisdiction } from '../../../shared/determination/duty-words.js';
import type { VocabularyList } from '../../../shared/vocabulary/choose-vocabulary.js';
import { stateLabels } from '../../../shared/vocabulary/state-labels.js';
import { Section } from '../look/section.js';
import { lawPages } from '../words/law-pages.js';

const say = lawPages.vocabulary;

/** Labels of states' forms, each with the federal words that it may mean. */
export function StateWords({ lists, asked }: { lists: readonly VocabularyList[]; asked: string }) {
  const words = new Map(
    lists.flatMap((list) => list.words.map(({ slug, label }) => [`${list.id} ${slug}`, label])),
  );
  const like = asked.trim().toLowerCase();
  const found = stateLabels
    .map((one) => ({ ...one, labels: one.labels.filter(({ label }) => label.toLowerCase().includes(like)) }))
    .filter(({ labels }) => labels.length > 0);
  if (found.length === 0) return null;
  return (
    <Section title={say.states}>
      <p>{say.statesAbout}</p>
      {found.map(({ state, list, source, basis, labels }) => (
        <details key={`${state} ${list}`} open={like !== ''}>
          <summary>{say.state(nameJurisdiction(`us-${state.toLowerCase()}`), say.lists[list])}</summary>
          <p class="quiet">
            {say.source(source)} {basis === 'memory' && <span class="words-mark">{say.memory}</span>}
          </p>
          <dl class="words">
            {labels.map(({ label, federal, note }) => (
              <div key={label}>
                <dt>{label}</dt>
                <dd>
                  {federal.length === 0
                    ? say.noWord
                    : federal.map((slug) => words.get(`${list} ${slug}`) ?? slug).join(' · ')}
                  {note !== undefined && <span class="words-source">{note}</span>}
                </dd>
              </div>
            ))}
          </dl>
        </details>
      ))}
    </Section>
  );
}
