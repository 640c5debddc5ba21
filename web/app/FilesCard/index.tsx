import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { DEMO_NAMES, demoPlan, shownName } from '../../../engine/index.ts';
import type { Plan } from '../../../engine/index.ts';
import { Lazy } from '../../common/Lazy.tsx';
import { agoWords } from '../../common/words.ts';
import { commitEdit } from '../../state/edit.ts';
import { saveFile } from '../../state/files.ts';
import { fileCopyIsOld, keepsForGood, saveState } from '../../state/saving.ts';
import {
  addYard,
  bringBack,
  copyYard,
  deleteForGood,
  goodStates,
  openFromShelf,
  putAway,
  refreshShelf,
  shelf,
} from '../../state/shelf.ts';
import type { GoodState, YardRecord } from '../../state/storage/yards.ts';
import { UNDO_LETTERS, UNDO_STEPS } from '../../state/undo-cap.ts';
import { openYard, plan } from '../../state/yard.ts';
import { openAnyFile } from '../drop.ts';
import { BrokenFileReport } from './BrokenFileReport.tsx';
import { emptyYard } from './empty-yard.ts';
import './style.css';

const loadHanding = (): Promise<ComponentType> => import('../later-stages.ts').then((part) => part.Handing);

/** The yards kept here, files out and in, and how safe all that is. */
export function FilesCard() {
  const now = Date.now();
  useEffect(() => void refreshShelf(), []);
  return (
    <>
      <BrokenFileReport />
      <NameField />

      <h2>Files</h2>
      <div class="files-row">
        <button type="button" class="main" onClick={saveFile}>
          Save a file
        </button>
        <label class="button files-open">
          Open a file…
          <input
            type="file"
            class="unseen"
            accept=".json,.epw,application/json"
            onChange={(event) => {
              const file = event.currentTarget.files?.[0];
              event.currentTarget.value = '';
              if (file) void openAnyFile(file);
            }}
          />
        </label>
        <button type="button" onClick={copyYard}>
          Make a copy here
        </button>
      </div>
      <KeptWords now={now} />

      <h2>Yards kept in this browser</h2>
      <ul class="files-shelf">
        {shelf.value
          .filter(({ putAwayAt }) => putAwayAt === null)
          .map((yard) => (
            <ShelfRow key={yard.id} yard={yard} now={now} />
          ))}
      </ul>
      <PutAway now={now} />
      <EarlierStates now={now} />

      <h2>New</h2>
      <div class="files-row">
        <button type="button" onClick={() => addYard(emptyYard(plan.value), 'New yard')}>
          An empty yard at this place
        </button>
        {DEMO_NAMES.map((name) => {
          const demo = demoPlan(name);
          return (
            <button key={name} type="button" onClick={() => addYard(demo, 'Demo yard')}>
              Demo: {demo.name ?? name}
            </button>
          );
        })}
      </div>

      <Lazy load={loadHanding} what="Reports and copies" />
    </>
  );
}

function NameField() {
  // What is being typed: the card may be drawn again meanwhile.
  const [typed, setTyped] = useState<string | null>(null);
  const take = (text: string): void => {
    setTyped(null);
    commitEdit('Rename the yard', { ...plan.value, name: text.trim() || undefined });
  };
  return (
    <label class="files-name">
      Name of this yard
      <input
        type="text"
        value={typed ?? plan.value.name ?? ''}
        readOnly={openYard.value.readOnly !== null}
        onInput={(event) => setTyped(event.currentTarget.value)}
        onChange={(event) => take(event.currentTarget.value)}
      />
    </label>
  );
}

function KeptWords({ now }: { readonly now: number }) {
  const { fileCopyAt } = openYard.value;
  const state = saveState.value;
  return (
    <div class="files-kept">
      <p>
        {state.kind === 'unsaved'
          ? state.why
          : state.kind === 'saved'
            ? `Saved in this browser ${agoWords(state.at, now)}.`
            : 'Saving in this browser…'}
      </p>
      <p class={fileCopyIsOld(now) ? 'files-old' : ''}>
        {fileCopyAt === null
          ? 'You have no file copy of this yard yet.'
          : `Your last file copy was made ${agoWords(fileCopyAt, now)}.`}
        {fileCopyIsOld(now) && ' Save a file now and again, at least each season.'}
      </p>
      {keepsForGood.value === false && (
        <p>
          This browser may clear what it keeps when space runs short or after weeks without a visit. A file is safe from
          that.
        </p>
      )}
      {keepsForGood.value === true && <p>This browser has promised not to clear what Shadewright keeps.</p>}
      <p>
        Undo reaches {UNDO_STEPS} steps back, less where the yard is so large that they fill {UNDO_LETTERS / 1e6} MB.
        What is older stays done.
      </p>
      <p>Nothing is sent anywhere. The yard is in this browser and in the files you save.</p>
    </div>
  );
}

function ShelfRow({ yard, now }: { readonly yard: YardRecord; readonly now: number }) {
  const isOpen = yard.id === openYard.value.id;
  const name = shownName(yard.name);
  return (
    <li class="files-yard" aria-current={isOpen ? 'true' : undefined}>
      <span class="files-yard-name">
        <bdi>{name}</bdi> <small>{isOpen ? 'open now' : `changed ${agoWords(yard.changedAt, now)}`}</small>
      </span>
      {!isOpen && (
        <button type="button" aria-label={`Open ${name}`} onClick={() => openFromShelf(yard.id)}>
          Open
        </button>
      )}
      {!isOpen && (
        <button type="button" aria-label={`Put away ${name}`} onClick={() => putAway(yard)}>
          Put away
        </button>
      )}
    </li>
  );
}

function PutAway({ now }: { readonly now: number }) {
  const away = shelf.value.filter(({ putAwayAt }) => putAwayAt !== null);
  const [sure, setSure] = useState<string | null>(null);
  if (away.length === 0) return null;
  return (
    <details>
      <summary>Put away ({away.length})</summary>
      <ul class="files-shelf">
        {away.map((yard) => {
          const name = shownName(yard.name);
          return (
            <li key={yard.id} class="files-yard">
              <span class="files-yard-name">
                <bdi>{name}</bdi> <small>put away {agoWords(yard.putAwayAt ?? now, now)}</small>
              </span>
              <button type="button" aria-label={`Bring back ${name}`} onClick={() => bringBack(yard)}>
                Bring back
              </button>
              <button
                type="button"
                aria-label={sure === yard.id ? `Yes, delete ${name} for good` : `Delete ${name} for good`}
                onClick={() => (sure === yard.id ? deleteForGood(yard) : setSure(yard.id))}
              >
                {sure === yard.id ? 'Yes, delete for good' : 'Delete…'}
              </button>
            </li>
          );
        })}
      </ul>
    </details>
  );
}

function EarlierStates({ now }: { readonly now: number }) {
  const [states, setStates] = useState<readonly GoodState[]>([]);
  const { id } = openYard.value;
  useEffect(() => void goodStates().then(setStates), [id]);
  if (states.length === 0) return null;
  const open = ({ at, plan: earlier }: GoodState): Promise<boolean> =>
    addYard(
      { ...earlier, name: `${earlier.name ?? 'Unnamed yard'}, as it was ${agoWords(at, Date.now())}` } satisfies Plan,
      'Earlier state',
    );
  return (
    <details>
      <summary>Earlier states of this yard ({states.length})</summary>
      <ul class="files-shelf">
        {states.toReversed().map((state) => (
          <li key={state.at} class="files-yard">
            <span class="files-yard-name">As it was {agoWords(state.at, now)}</span>
            <button type="button" onClick={() => open(state)}>
              Open as a copy
            </button>
          </li>
        ))}
      </ul>
    </details>
  );
}
