import { Link } from 'wouter-preact';
import { useAskAll } from '../ask/use-ask-all.js';
import { tellDay } from '../lists/tell-day.js';
import { ThingList } from '../lists/thing-list.js';
import { Page } from '../look/page.js';
import { dayIn } from '../look/tell-instant.js';
import { places } from '../words/en/places.js';

const { policies: say } = places;

interface Policy {
  readonly id: string;
  readonly number: string;
  readonly insurer: string;
  readonly covers?: string;
  readonly firstDay: string;
  readonly lastDay: string;
  readonly scheduledCraft: readonly string[];
}

/** The insurance policies, for managers. */
export default function PoliciesPage() {
  const asked = useAskAll<Policy>('/api/policies');
  const today = dayIn();
  return (
    <Page
      title={say.title}
      lead={say.lead}
      actions={
        <Link class="button main" href="/policies/add">
          {say.adding.title}
        </Link>
      }
    >
      <p class="links-line">
        <Link href="/places">{places.title}</Link>
      </p>
      <ThingList
        asked={asked}
        empty={say.empty}
        lineOf={({ id, number, insurer, covers, firstDay, lastDay, scheduledCraft }) => ({
          href: `/policies/${id}`,
          name: `${insurer} ${number}`,
          state: lastDay < today ? say.over : say.craft(scheduledCraft.length),
          about: [covers, say.days(tellDay(firstDay), tellDay(lastDay))].filter(Boolean).join(' · '),
        })}
      />
    </Page>
  );
}
