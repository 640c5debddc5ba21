import { plan } from '../../../state/yard.ts';
import { siteNow } from '../typed.ts';

/**
 * First line of a paper: whose it is, when it was made, and whether its climate is a guess. No coordinates: they tell
 * where somebody lives.
 */
export function PaperHead() {
  const { name, climate } = plan.value;
  return (
    <p>
      <bdi>{name ?? 'Yard'}</bdi> · made {siteNow().date}
      {climate.from === 'rough' ? ' · rough climate' : ''}
    </p>
  );
}
