import { Lazy, lazily } from '../../common/Lazy.tsx';
import { heat } from '../../state/results.ts';
import { toolHint } from '../../state/speech.ts';
import { slipHeight, stage } from '../../state/view.ts';
import { ErrorBoundary } from '../ErrorBoundary/index.tsx';
import { LiveRegion, Notices } from '../Notices/index.tsx';
import { Slip } from '../Slip/index.tsx';
import { StageTabs } from '../StageTabs/index.tsx';
import { SunBar } from '../SunBar/index.tsx';
import { TopBar } from '../TopBar/index.tsx';
import { loadToolRow, loadYardMap } from './slots.ts';
import './style.css';

const MapCaption = lazily(() => import('../first-picture.ts').then((part) => part.MapCaption), '');

/** One drawing that never leaves, one slip beside it, one sun bar under it. */
export function App() {
  return (
    <div class={`shell shell-slip-${slipHeight.value}`}>
      <a class="skip-link" href="#slip">
        Skip to the panel
      </a>
      <TopBar />
      <StageTabs />
      <main class="map-slot" aria-label="The drawing">
        {stage.value === 'draw' && (
          <div class="tool-slot">
            <ErrorBoundary what="The tool row">
              <Lazy load={loadToolRow} what="The tool row" />
            </ErrorBoundary>
          </div>
        )}
        <div class="drawing-slot">
          <ErrorBoundary what="The drawing">
            <Lazy load={loadYardMap} what="The drawing" />
          </ErrorBoundary>
          {stage.value !== 'draw' && heat.value.shown && <MapCaption />}
          {toolHint.value !== null && <p class="tool-hint">{toolHint.value}</p>}
          <Notices />
        </div>
      </main>
      <SunBar />
      <Slip />
      <LiveRegion />
    </div>
  );
}
