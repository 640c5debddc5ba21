import { useSignalEffect } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { barredPosts } from '../../map/laid-on/barred-posts.ts';
import { lowRoofs, postsInTheWay } from './faults.ts';

/** What cannot be built as it is drawn: posts in the way, drawn hollow, and cloth lower than what is under it. */
export function Faults() {
  useSignalEffect(() => {
    barredPosts.value = postsInTheWay.value.map(({ at }) => at);
  });
  useEffect(
    () => () => {
      barredPosts.value = [];
    },
    [],
  );
  return (
    <>
      {[
        ...new Set(
          postsInTheWay.value.map(
            ({ cloth, by }) =>
              `${cloth}: a post would stand in ${by}. It is drawn hollow; move or resize the cloth until it is filled.`,
          ),
        ),
      ].map((words) => (
        <p key={words} class="said problem" role="status">
          {words}
        </p>
      ))}
      {lowRoofs.value.map(({ plant, cloth }) => (
        <p key={`${plant}/${cloth}`} class="said problem" role="status">
          {cloth} hangs lower than {plant} is tall: raise it, or the cloth lies on the leaves and burns them.
        </p>
      ))}
    </>
  );
}
