import { useState } from 'preact/hooks';
import { Link } from 'wouter-preact';
import { useAskAll } from '../ask/use-ask-all.js';
import { ThingList } from '../lists/thing-list.js';
import { useManages } from '../lists/use-manages.js';
import { KeptNote } from '../look/notes.js';
import { Page } from '../look/page.js';
import { Section } from '../look/section.js';
import { houseRules } from '../words/en/house-rules.js';
import { retention } from '../words/en/retention.js';
import { keptPages } from '../words/en/kept-pages.js';
import { places as say } from '../words/en/places.js';

interface Station {
  readonly id: string;
  readonly name: string;
  readonly address?: string;
  readonly numbers?: readonly unknown[];
}

interface Spot {
  readonly id: string;
  readonly name: string;
  readonly alsoCalled?: readonly string[];
  readonly position?: string;
  readonly waterBody?: string;
}

/** Where craft leave from, and what places on the water are called. */
export default function PlacesPage() {
  const manages = useManages();
  const [ended, setEnded] = useState(false);
  const query = ended ? '?retired=yes' : '';
  const stations = useAskAll<Station>(`/api/stations${query}`, { keep: true });
  const spots = useAskAll<Spot>(`/api/places${query}`, { keep: true });
  return (
    <Page
      title={say.title}
      lead={say.lead}
      {...(manages && {
        actions: (
          <>
            <Link class="button" href="/places/stations/add">
              {say.stations.adding.title}
            </Link>
            <Link class="button main" href="/places/places/add">
              {say.spots.adding.title}
            </Link>
          </>
        ),
      })}
    >
      <KeptNote keptAt={stations.keptAt ?? spots.keptAt} />
      {manages && (
        <p class="links-line">
          <Link href="/policies">{say.policiesLink}</Link>
          <Link href="/house-rules">{houseRules.title}</Link>
          <Link href="/retention">{retention.title}</Link>
        </p>
      )}
      <Section title={say.stations.title}>
        <ThingList asked={stations} empty={say.stations.empty} lineOf={stationLine} />
      </Section>
      <Section title={say.spots.title}>
        <ThingList asked={spots} empty={say.spots.empty} lineOf={spotLine} />
      </Section>
      <label class="tick">
        <input type="checkbox" checked={ended} onChange={() => setEnded(!ended)} />
        <span>{keptPages.retired}</span>
      </label>
    </Page>
  );
}

function stationLine({ id, name, address, numbers = [] }: Station) {
  const { noAddress, noNumbers, numbersCount } = say.stations;
  return {
    href: `/places/stations/${id}`,
    name,
    state: numbers.length === 0 ? noNumbers : numbersCount(numbers.length),
    about: address ?? noAddress,
  };
}

function spotLine({ id, name, alsoCalled = [], position, waterBody }: Spot) {
  const about = [...alsoCalled, waterBody, position ?? say.spots.noPosition];
  return { href: `/places/places/${id}`, name, about: about.filter(Boolean).join(' · ') };
}
