/** A save, as other tabs hear of it. */
export interface TabNews {
  readonly yard: string;
  readonly revision: number;
}

const channel = typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel('shadewright');

export function tellTabs(news: TabNews): void {
  channel?.postMessage(news);
}

/** A hint only: what decides is the revision in storage. */
export function onTabNews(listener: (news: TabNews) => void): void {
  channel?.addEventListener('message', ({ data }: MessageEvent<TabNews>) => listener(data));
}
