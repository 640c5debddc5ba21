import { Drawings } from './Drawings.tsx';
import { PackPreview } from './PackPreview.tsx';
import { Report } from './Report.tsx';
import { SharePreview } from './SharePreview.tsx';

/** What goes out of the yard to other people, and what comes in from an adviser. */
export function Handing() {
  return (
    <>
      <Report />
      <Drawings />
      <SharePreview />
      <PackPreview />
    </>
  );
}
