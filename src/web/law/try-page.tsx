import { Link } from 'wouter-preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Determination } from '../../../shared/determination/determination.js';
import { DeterminationView } from '../determination/determination-view.js';
import { moveToNow } from '../determination/move-to-now.js';
import { CautionStrip } from '../look/caution-strip.js';
import { Button } from '../look/button.js';
import { Choice } from '../look/choice.js';
import { Field } from '../look/field.js';
import { Page } from '../look/page.js';
import { nowByService } from '../look/use-now.js';
import { law as say } from '../words/law.js';
import { determineText, type Failure } from './determine-text.js';

interface Sample {
  readonly file: string;
  readonly title: string;
  readonly about: string;
}

/** Facts in, the determination out, for anyone: a sample to start from, and nothing kept. */
export default function TryPage() {
  const [samples, setSamples] = useState<readonly Sample[]>([]);
  const [chosen, setChosen] = useState<string>();
  const [facts, setFacts] = useState('');
  const [said, setSaid] = useState('');
  const [busy, setBusy] = useState(false);
  const [determination, setDetermination] = useState<Determination | null>(null);
  const [failure, setFailure] = useState<Failure | null>(null);
  const heading = useRef<HTMLHeadingElement>(null);

  const choose = async (file: string): Promise<void> => {
    setChosen(file);
    setFacts(moveToNow(await (await fetchFile(`/samples/${file}`)).text(), nowByService()));
  };
  /** A sample that cannot be had leaves the page usable: facts can be typed. */
  const orSay = (work: Promise<void>): void => void work.catch(() => setSaid(say.noSamples));
  useEffect(() => {
    orSay(
      (async () => {
        const list = (await (await fetchFile('/samples/samples.json')).json()) as Sample[];
        setSamples(list);
        if (list[0] !== undefined) await choose(list[0].file);
      })(),
    );
  }, []);
  useEffect(() => {
    heading.current?.focus({ preventScroll: true });
    heading.current?.scrollIntoView({ block: matchMedia('(width < 60rem)').matches ? 'start' : 'nearest' });
  }, [determination, failure]);

  const determine = async (): Promise<void> => {
    setBusy(true);
    setSaid(say.determining);
    const came = await determineText(facts);
    setBusy(false);
    setSaid('');
    setDetermination('duties' in came ? came : null);
    setFailure('duties' in came ? null : came);
  };

  return (
    <Page title={say.title} lead={say.lead} strip={<CautionStrip />}>
      <div class="two-columns">
        <form
          class="form"
          onSubmit={(event) => {
            event.preventDefault();
            if (!busy) void determine();
          }}
        >
          <Choice
            legend={say.samples}
            value={chosen}
            options={samples.map(({ file, title, about }) => ({ value: file, label: title, about }))}
            onChoose={(file) => orSay(choose(file))}
          />
          <Field
            label={say.facts}
            hint={say.factsHint}
            value={facts}
            onInput={setFacts}
            rows={18}
            error={failure === null ? null : say.lookAtFaults}
          />
          <div class="actions">
            <p role="status">{said}</p>
            <Button type="submit" look="main" busy={busy}>
              {say.determine}
            </Button>
          </div>
        </form>
        <section class="answer" aria-label={say.answer}>
          {determination === null && failure === null && <p class="empty">{say.nothingYet}</p>}
          {determination !== null && (
            <>
              <h2 tabIndex={-1} ref={heading}>
                {say.determination}
              </h2>
              <DeterminationView determination={determination} now={nowByService()} />
            </>
          )}
          {failure !== null && (
            <>
              <h2 tabIndex={-1} ref={heading}>
                {say.noDetermination}
              </h2>
              <Faults failure={failure} />
            </>
          )}
        </section>
      </div>
      <p class="links-line">
        <a href="/api/docs">{say.byProgram}</a> <Link href="/law">{say.lawInUse}</Link>
      </p>
    </Page>
  );
}

function Faults({ failure }: { failure: Failure }) {
  return (
    <div class="problem">
      <p>
        <strong>{failure.title}.</strong>
      </p>
      <ol>
        {failure.errors.map(({ pointer, detail }) => (
          <li key={`${pointer} ${detail}`}>
            {pointer !== '' && <code>{pointer}</code>} {detail}
          </li>
        ))}
      </ol>
    </div>
  );
}

async function fetchFile(path: string): Promise<Response> {
  const response = await fetch(path);
  if (!response.ok) throw new Error(`${path}: ${response.status}`);
  return response;
}
