import { useState } from 'preact/hooks';
import {
  chooseVocabulary,
  type OfferedWord,
  type VocabularyList,
} from '../../../shared/vocabulary/choose-vocabulary.js';
import { Empty, Note } from '../look/notes.js';
import { Field } from '../look/field.js';
import { Page } from '../look/page.js';
import { PrintButton } from '../look/print-button.js';
import { PrintedBy } from '../look/printed-by.js';
import { Section } from '../look/section.js';
import { nowByService } from '../look/use-now.js';
import { lawPages } from '../words/law-pages.js';
import { StateWords } from './state-words.js';
import './vocabulary.css';

const say = lawPages.vocabulary;
const DAY = /^\d{4}-\d\d-\d\d$/;

/** The words that are offered for an occurrence of a day, list by list, each with its source and how it was come by. */
export default function VocabularyPage() {
  const [day, setDay] = useState(() => new Date(nowByService()).toISOString().slice(0, 10));
  const [asked, setAsked] = useState('');
  const isDay = DAY.test(day);
  const { version, note, lists } = chooseVocabulary(isDay ? day : '9999-12-31');
  const found = lists
    .map((list) => ({ ...list, words: list.words.filter((word) => isLike(word, asked)) }))
    .filter(({ words }) => words.length > 0);
  return (
    <Page title={say.title} lead={say.lead} actions={<PrintButton />}>
      <PrintedBy />
      <div class="words-asked unprinted">
        <Field label={say.day} type="date" value={day} onInput={setDay} error={isDay ? null : say.badDay} />
        <Field label={say.find} type="search" value={asked} onInput={setAsked} />
      </div>
      <p>{say.version(version)}</p>
      {note !== null && <Note>{note}</Note>}
      {found.length === 0 && <Empty>{say.none}</Empty>}
      {found.map((list) => (
        <Words key={list.id} list={list} />
      ))}
      <StateWords lists={lists} asked={asked} />
    </Page>
  );
}

function Words({ list: { title, words } }: { list: VocabularyList }) {
  const sources = [...new Set(words.map(({ source }) => source))];
  const [only] = sources.length === 1 ? sources : [];
  return (
    <Section title={title} aside={<span class="quiet">{say.words(words.length)}</span>}>
      {only !== undefined && <p class="quiet">{say.source(only)}</p>}
      <dl class="words">
        {words.map((word) => (
          <div key={word.slug}>
            <dt>
              {word.label} <Basis word={word} />
            </dt>
            <dd>
              {word.definition}
              {only === undefined && <span class="words-source">{say.source(word.source)}</span>}
            </dd>
          </div>
        ))}
      </dl>
    </Section>
  );
}

/** Memory is marked until somebody reads the source. */
function Basis({ word: { basis, definitionBasis } }: { word: OfferedWord }) {
  if (basis === 'memory') return <span class="words-mark">{say.memory}</span>;
  return (
    <>
      {basis === 'read-secondary' && <span class="quiet">({say.secondary})</span>}
      {definitionBasis === 'memory' && <span class="words-mark">{say.meaningFromMemory}</span>}
    </>
  );
}

function isLike(
  { label, definition = '' }: Pick<OfferedWord, 'label' | 'definition'>,
  asked: string,
): boolean {
  const text = `${label} ${definition}`.toLowerCase();
  return asked
    .toLowerCase()
    .split(/\s+/)
    .every((word) => text.includes(word));
}
