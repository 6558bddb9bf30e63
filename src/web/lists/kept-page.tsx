import type { ComponentChildren } from 'preact';
import { Link, useLocation } from 'wouter-preact';
import { useAsk } from '../ask/use-ask.js';
import { Fold } from '../look/fold.js';
import { ErrorState, KeptNote, Loading, Note } from '../look/notes.js';
import { Page } from '../look/page.js';
import { PrintedBy } from '../look/printed-by.js';
import { DefinitionRows, Section } from '../look/section.js';
import { keptPages as say } from '../words/en/kept-pages.js';
import type { FieldSpec, Thing } from './field-spec.js';
import { KeptAdd } from './kept-add.js';
import { KeptChange } from './kept-change.js';
import { KeptVersions } from './kept-versions.js';
import './lists.css';
import { tellDay } from './tell-day.js';
import { told } from './told.js';
import { useManages } from './use-manages.js';

interface KeptPageProps {
  /** Where the list is, such as `/api/stations`. */
  readonly list: string;
  /** `add`, or the id of one. */
  readonly id: string;
  readonly specs: readonly FieldSpec[];
  /** What it is called, of the thing itself. */
  readonly nameOf: (thing: Thing) => string;
  /** Such as `Add a station`, and why nothing of it is deleted. */
  readonly adding: { readonly title: string; readonly lead: string };
  readonly back: { readonly href: string; readonly words: string };
  /** Where one is shown, without its id. */
  readonly own: string;
  readonly touches: readonly string[];
  /** Fields that `beside` shows in its own way. */
  readonly apart?: readonly string[];
  /** What follows from it, such as a position in degrees. */
  readonly beside?: (thing: Thing) => ComponentChildren;
}

/** One thing of which every version is kept, and the form that adds another. */
export function KeptPage(props: KeptPageProps) {
  return props.id === 'add' ? <AddPage {...props} /> : <OnePage {...props} />;
}

function AddPage({ list, specs, adding, own, touches, back }: KeptPageProps) {
  const [, go] = useLocation();
  if (!useManages()) return <Page title={adding.title}>{say.managersOnly}</Page>;
  return (
    <Page title={adding.title} lead={adding.lead}>
      <Back {...back} />
      <KeptAdd
        path={list}
        specs={specs}
        submit={adding.title}
        touches={touches}
        onAdded={(id) => go(`${own}/${id}`)}
      />
    </Page>
  );
}

function OnePage({ list, id, specs, nameOf, back, touches, apart = [], beside }: KeptPageProps) {
  const path = `${list}/${id}`;
  const { data: thing, error, keptAt, again } = useAsk<Thing>(path, { keep: true });
  const manages = useManages();
  if (thing === undefined) {
    return (
      <Page title={back.words}>
        {error === null ? <Loading /> : <ErrorState error={error} again={again} />}
      </Page>
    );
  }
  const { retiredOn } = thing as { retiredOn?: string };
  return (
    <Page title={nameOf(thing)}>
      <PrintedBy />
      <KeptNote keptAt={keptAt} />
      {keptAt === null && error !== null && <ErrorState error={error} again={again} />}
      <Back {...back} />
      {retiredOn !== undefined && <Note>{say.ended(tellDay(retiredOn))}</Note>}
      <div class="thing-sheet">
        <div>
          <Section title={say.entered}>
            <DefinitionRows
              rows={specs.flatMap((spec) => {
                const value = told(spec, thing);
                return value === null || apart.includes(spec.name) ? [] : [{ term: spec.label, value }];
              })}
            />
            {beside?.(thing)}
            {manages && keptAt === null && (
              <Fold title={say.change}>
                {() => (
                  <KeptChange path={path} specs={specs} thing={thing} submit={say.keep} touches={touches} />
                )}
              </Fold>
            )}
          </Section>
        </div>
        <div>
          <KeptVersions path={path} specs={specs} />
        </div>
      </div>
    </Page>
  );
}

function Back({ href, words }: KeptPageProps['back']) {
  return (
    <p class="links-line unprinted">
      <Link href={href}>{words}</Link>
    </p>
  );
}
