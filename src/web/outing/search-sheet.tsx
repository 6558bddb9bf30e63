import { useState } from 'preact/hooks';
import { CallBack } from '../call/call-back.js';
import { Button } from '../look/button.js';
import { Dialog } from '../look/dialog.js';
import { DefinitionRows, Section } from '../look/section.js';
import { notBack as say } from '../words/not-back.js';
import { peopleOf, searchRows } from './search-rows.js';
import type { NotBackHere } from './use-not-back.js';

/** What searchers are told, as far as it is known; each number is called by a tap. */
export function SearchSheet({ here }: { here: NotBackHere }) {
  const callable = peopleOf(here).filter(({ phone }) => phone !== undefined);
  return (
    <Section title={say.sheet.title}>
      <DefinitionRows
        rows={searchRows(here).map(({ term, said }) => ({
          term,
          value: said.length === 0 ? <span class="quiet">{say.sheet.unknown}</span> : said[0],
          ...(said.length > 1 && { about: said.slice(1).join(' · ') }),
        }))}
      />
      {callable.length > 0 && (
        <div class="call-list unprinted">
          {callable.map(({ name, phone = '' }) => (
            <a class="button" key={`${name} ${phone}`} href={`tel:${phone}`}>
              {say.sheet.callPerson(name, phone)}
            </a>
          ))}
        </div>
      )}
    </Section>
  );
}

/** The same in the largest letters, in the order in which a dispatcher asks. */
export function ReadSheet({ here }: { here: NotBackHere }) {
  const [open, setOpen] = useState(false);
  return (
    <>
      <Button onPress={() => setOpen(true)}>{say.sheet.read}</Button>
      {open && (
        <Dialog title={say.title(here.known.unit)} onClose={() => setOpen(false)}>
          <dl class="read-out">
            {searchRows(here).map(({ term, said }) => (
              <div key={term}>
                <dt>{term}</dt>
                <dd>{said.join(', ') || say.sheet.unknown}</dd>
              </div>
            ))}
          </dl>
          <CallBack />
        </Dialog>
      )}
    </>
  );
}
