import { useLocation } from 'wouter-preact';
import { KeptAdd } from '../lists/kept-add.js';
import { Page } from '../look/page.js';
import { fleetForms as say } from '../words/en/fleet-forms.js';
import { craftSpecs } from './craft-specs.js';
import { useStations } from '../lists/use-stations.js';

/** A craft joins the fleet. */
export default function AddCraftPage() {
  const [, go] = useLocation();
  const specs = craftSpecs(useStations());
  return (
    <Page title={say.title} lead={say.lead}>
      <KeptAdd
        path="/api/craft"
        specs={specs}
        submit={say.add}
        touches={['/api/craft', '/api/device/fleet']}
        onAdded={(id) => go(`/fleet/${id}`)}
      />
    </Page>
  );
}
