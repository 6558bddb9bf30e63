import { useAsk } from '../ask/use-ask.js';
import { useTell } from '../ask/use-tell.js';
import { Button } from '../look/button.js';
import { Fold } from '../look/fold.js';
import { ErrorState } from '../look/notes.js';
import { DefinitionRows } from '../look/section.js';
import { tellInstant } from '../look/tell-instant.js';
import { packetLink as say } from '../words/packet-link.js';
import { CounselLinkForm } from './counsel-link-form.js';
import type { PacketView } from './hand-over-answers.js';
import { LinkForm } from './link-form.js';

interface LinkView {
  readonly id: string;
  readonly to: string;
  readonly address: string;
  readonly expiresAt: string;
  readonly state: keyof typeof say.states;
  readonly counselAccount?: string;
  readonly mailing: { readonly at: string; readonly answer: string } | null;
  readonly collectedAt: string | null;
  readonly collections: readonly { readonly at: string; readonly what: keyof typeof say.happened }[];
}

interface PacketLinksProps {
  readonly incident: string;
  readonly packet: PacketView;
  readonly makes: boolean;
}

/** The links to a packet: whether each still opens, everything that happened at it, and the way to take it back. */
export function PacketLinks({ incident, packet, makes }: PacketLinksProps) {
  const at = `/api/incidents/${incident}/packets/${packet.id}`;
  const path = `${at}/links`;
  const { data, error, again } = useAsk<{ items: readonly LinkView[] }>(path);
  const telling = useTell();
  const links = data?.items ?? [];
  const revoke = ({ id }: LinkView): void => void telling.tell(`${path}/${id}`, { method: 'DELETE' }, [path]);
  return (
    <>
      {error !== null && <ErrorState error={error} again={again} />}
      {telling.error !== null && <ErrorState error={telling.error} />}
      {links.length > 0 && (
        <DefinitionRows
          rows={links.map((link) => ({
            term: say.links,
            value: say.linkOf(link.to, link.address),
            about: aboutOf(link),
            ...(makes &&
              link.state === 'open' && {
                action: (
                  <Button look="plain" label={say.revokeOf(link.to)} onPress={() => revoke(link)}>
                    {say.revoke}
                  </Button>
                ),
              }),
          }))}
        />
      )}
      {makes && packet.privileged && (
        <Fold title={say.counsel.title}>
          {() => <CounselLinkForm incident={incident} path={`${at}/counsel-links`} links={path} />}
        </Fold>
      )}
      {makes && !packet.privileged && (
        <Fold title={say.title}>
          {() => (
            <LinkForm path={path} name={packet.name} asksLanguage={MAY_READ_SPANISH.has(packet.recipient)} />
          )}
        </Fold>
      )}
    </>
  );
}

const MAY_READ_SPANISH: ReadonlySet<string> = new Set(['renter', 'other-party']);

function aboutOf({ state, expiresAt, counselAccount, mailing, collectedAt, collections }: LinkView): string {
  return [
    ...(counselAccount === undefined ? [] : [say.counsel.signsIn]),
    say.states[state](tellInstant(expiresAt)),
    ...(mailing === null ? [] : [say.mailed(tellInstant(mailing.at), mailing.answer)]),
    collectedAt === null ? say.notCollected : say.collected(tellInstant(collectedAt)),
    ...collections.map(({ at, what }) => say.happened[what](tellInstant(at))),
  ].join(' · ');
}
