/** A browser in memory: storage that keeps, copies and reports as the real one does, and listeners that tests can call. */
type Listener = (...given: never[]) => unknown;

const event = () => {
  const listeners = new Set<Listener>();
  return {
    addListener: (listener: Listener) => void listeners.add(listener),
    removeListener: (listener: Listener) => void listeners.delete(listener),
    fire: (...given: unknown[]) => [...listeners].map((listener) => listener(...(given as never[]))),
    get count() {
      return listeners.size;
    },
  };
};

function area(name: string, changed: { fire(...given: unknown[]): unknown }, room: () => number) {
  const kept = new Map<string, string>();
  const size = (entries: ReadonlyMap<string, string>): number =>
    [...entries].reduce((sum, [key, value]) => sum + key.length + value.length, 0);
  return {
    get: async (key: string | null) =>
      Object.fromEntries(
        [...kept].filter(([known]) => key === null || known === key).map(([known, value]) => [known, JSON.parse(value)]),
      ),
    set: async (entries: Record<string, unknown>) => {
      const next = new Map(kept);
      for (const [key, value] of Object.entries(entries)) next.set(key, JSON.stringify(value));
      if (size(next) > room()) throw new Error('QUOTA_BYTES quota exceeded');
      for (const [key, value] of next) kept.set(key, value);
      changed.fire(
        Object.fromEntries(Object.keys(entries).map((key) => [key, { newValue: JSON.parse(next.get(key) ?? '') }])),
        name,
      );
    },
    remove: async (keys: string | string[]) => {
      for (const key of [keys].flat()) kept.delete(key);
      changed.fire(Object.fromEntries([keys].flat().map((key) => [key, {}])), name);
    },
  };
}

/** Installs it as `browser`; what a test may turn: tab in front, what the page answers, whether scripts may run, room in storage. */
export function fakeBrowser() {
  const calls: string[] = [];
  const world = {
    activeTab: { id: 1, url: 'https://quillbrook.example/ad' } as { id: number; url?: string } | undefined,
    beforeQuery: async (): Promise<void> => undefined,
    mayInject: true,
    /** Tabs with pages of the extension itself. */
    ownTabs: [] as { id: number; windowId?: number; url: string }[],
    panel: 'side-panel' as 'side-panel' | 'sidebar' | 'none' | 'declines',
    room: 10_000_000,
    pageAnswers: (_message: Record<string, unknown>): unknown => ({ ok: true, value: 'selection' }),
  };
  const onChanged = event();
  const events = {
    onMessage: event(),
    onActivated: event(),
    onUpdated: event(),
    onRemoved: event(),
    onInstalled: event(),
    onStartup: event(),
    onCommand: event(),
    onMenu: event(),
    onAction: event(),
  };
  const open = (name: string) => async (where?: unknown) => {
    calls.push(where === undefined ? name : `${name} ${JSON.stringify(where)}`);
    if (world.panel === 'declines') throw new Error('needs a gesture');
  };
  const browser = {
    runtime: {
      id: 'ironsift',
      onMessage: events.onMessage,
      onInstalled: events.onInstalled,
      onStartup: events.onStartup,
      getURL: (path: string) => `extension://ironsift/${path}`,
    },
    storage: {
      onChanged,
      session: area('session', onChanged, () => world.room),
      local: area('local', onChanged, () => world.room),
    },
    tabs: {
      onActivated: events.onActivated,
      onUpdated: events.onUpdated,
      onRemoved: events.onRemoved,
      query: async ({ url }: { url?: string }) => {
        if (url !== undefined) return world.ownTabs.filter((tab) => tab.url.startsWith(url.replace('*', '')));
        const { activeTab } = world;
        await world.beforeQuery();
        return activeTab ? [activeTab] : [];
      },
      get: async (id: number) => {
        if (world.activeTab?.id !== id) throw new Error('No tab');
        return world.activeTab;
      },
      create: async ({ url }: { url: string }) => void calls.push(`tab ${url}`),
      update: async (id: number, change: object) => void calls.push(`tab ${id} ${JSON.stringify(change)}`),
      sendMessage: async (id: number, message: Record<string, unknown>) => {
        calls.push(`to page ${id}: ${String(message.type)} ${String(message.mode ?? '')}`.trim());
        return world.pageAnswers(message);
      },
    },
    scripting: {
      executeScript: async ({ target, files }: { target: { tabId: number }; files: string[] }) => {
        calls.push(`inject ${files.join()} into ${target.tabId}`);
        if (!world.mayInject) throw new Error('Cannot access contents of the page');
      },
    },
    get sidePanel() {
      return world.panel === 'side-panel' || world.panel === 'declines' ? { open: open('side panel') } : undefined;
    },
    get sidebarAction() {
      return world.panel === 'sidebar' ? { open: open('sidebar') } : undefined;
    },
    commands: { onCommand: events.onCommand },
    action: { onClicked: events.onAction },
    contextMenus: {
      onClicked: events.onMenu,
      removeAll: async () => void calls.push('menus removed'),
      create: ({ id, contexts, title }: { id: string; contexts: string[]; title: string }) =>
        void calls.push(`menu ${id} on ${contexts.join()}: ${title}`),
    },
    i18n: {
      getMessage: (key: string) => ({ locale_tag: 'en', capture_menu_pick: 'Pick' })[key] ?? '',
      getUILanguage: () => 'en-GB',
    },
  };
  Object.assign(globalThis, { browser });
  /** Takes parts of the API away, as in browsers that lack them. */
  const without = (...parts: readonly string[]): void => {
    for (const part of parts) Reflect.deleteProperty(browser, part);
  };
  return { world, calls, events, storage: browser.storage, without };
}

/** Lets everything that waits on promises come to its end. */
export const settled = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 5));
