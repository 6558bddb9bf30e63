import { Link } from 'wouter-preact';
import type { PageProps } from '../app/page-route.js';
import { useAsk } from '../ask/use-ask.js';
import { KeptChange } from '../lists/kept-change.js';
import { KeptVersions } from '../lists/kept-versions.js';
import type { Thing } from '../lists/field-spec.js';
import { tellDay } from '../lists/tell-day.js';
import { told } from '../lists/told.js';
import { useManages } from '../lists/use-manages.js';
import '../lists/lists.css';
import { Fold } from '../look/fold.js';
import { ErrorState, KeptNote, Loading, Note } from '../look/notes.js';
import { Page } from '../look/page.js';
import { PrintedBy } from '../look/printed-by.js';
import { DefinitionRows, Section, type Row } from '../look/section.js';
import { fleetForms } from '../words/en/fleet-forms.js';
import { fleet as say } from '../words/fleet.js';
import type { Craft, NumberReading } from './craft-answers.js';
import { CraftNotes } from './craft-notes.js';
import { CraftServiceSection } from './craft-service.js';
import { craftSpecs, typeLabel } from './craft-specs.js';
import { StepLog } from './step-log.js';
import { useStations } from '../lists/use-stations.js';

/** One craft: whether it may go out, what it is, what was done to it, and what it was on an earlier day. */
export default function CraftPage({ params: { id = '' } }: PageProps) {
  const path = `/api/craft/${id}`;
  const { data: craft, error, keptAt, again } = useAsk<Craft>(path, { keep: true });
  const manages = useManages();
  const specs = craftSpecs(useStations());
  if (craft === undefined) {
    return (
      <Page title={say.title}>
        {error === null ? <Loading /> : <ErrorState error={error} again={again} />}
      </Page>
    );
  }
  const thing = craft as unknown as Thing;
  return (
    <Page title={craft.unitName} lead={[typeLabel(craft.type), ...(craft.colours ?? [])].join(', ')}>
      <PrintedBy />
      <KeptNote keptAt={keptAt} />
      {keptAt === null && error !== null && <ErrorState error={error} again={again} />}
      <p class="links-line unprinted">
        <Link href="/fleet">{say.toList}</Link>
      </p>
      {craft.retiredOn !== undefined && <Note>{say.left(tellDay(craft.retiredOn))}</Note>}
      <div class="thing-sheet">
        <div>
          <CraftServiceSection craft={craft} />
          <Section title={say.what}>
            <DefinitionRows
              rows={specs.flatMap((spec) =>
                rowOf(spec.label, told(spec, thing), readingOf(craft, spec.name)),
              )}
            />
            {manages && keptAt === null && (
              <Fold title={say.change}>
                {() => (
                  <KeptChange
                    path={path}
                    specs={specs}
                    thing={thing}
                    submit={fleetForms.keep}
                    touches={['/api/craft', '/api/device/fleet']}
                  />
                )}
              </Fold>
            )}
          </Section>
        </div>
        <div>
          <CraftNotes craft={craft} />
          <StepLog path={path} />
          <KeptVersions path={path} specs={specs} />
        </div>
      </div>
    </Page>
  );
}

function rowOf(term: string, value: string | null, reading: NumberReading | undefined): Row[] {
  if (value === null) return [];
  if (reading === undefined) return [{ term, value }];
  const { explanation, remarks } = reading;
  return [
    {
      term,
      value,
      about: (
        <>
          {remarks.map((remark) => (
            <strong key={remark}>{remark} </strong>
          ))}
          {explanation.join(' ')}
        </>
      ),
    },
  ];
}

function readingOf(craft: Craft, name: string): NumberReading | undefined {
  if (name === 'hullNumber') return craft.hullNumberReading;
  return name === 'registrationNumber' ? craft.registrationNumberReading : undefined;
}
