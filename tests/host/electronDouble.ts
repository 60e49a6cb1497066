import type * as Electron from 'electron';
import type { Parts } from '../../electron/desk.ts';

type Listener = (...given: never[]) => unknown;

class Emitter {
  readonly heard = new Map<string, Listener[]>();
  on(name: string, listener: Listener): this {
    this.heard.set(name, [...(this.heard.get(name) ?? []), listener]);
    return this;
  }
  once(name: string, listener: Listener): this {
    return this.on(name, listener);
  }
  /** The double's own: makes Electron say something. */
  say(name: string, ...given: unknown[]): number {
    const listeners = this.heard.get(name) ?? [];
    for (const listener of listeners) (listener as (...given: unknown[]) => unknown)(...given);
    return listeners.length;
  }
}

class Contents extends Emitter {
  readonly sent: [string, unknown][] = [];
  openHandler: ((details: { url: string }) => unknown) | undefined;
  send(channel: string, event: unknown): void {
    this.sent.push([channel, event]);
  }
  /** What the double's printer makes of the page. */
  prints: () => Promise<Buffer> = () => Promise.resolve(Buffer.from('%PDF-1.4 double'));
  readonly printed: Electron.PrintToPDFOptions[] = [];
  printToPDF(options: Electron.PrintToPDFOptions): Promise<Buffer> {
    this.printed.push(options);
    return this.prints();
  }
  setWindowOpenHandler(handler: (details: { url: string }) => unknown): void {
    this.openHandler = handler;
  }
}

type Handler = (call: unknown, input: unknown) => Promise<unknown>;
type Ask = (request: { url: string }, decide: (answer: { cancel: boolean }) => void) => void;

/**
 * The part of Electron that the bench uses, made by hand: it keeps Electron's order of events (what must come before `ready`, what only
 * after) and remembers what it was told. That each member exists in Electron is checked below against electron.d.ts; that Electron
 * behaves so cannot be checked without its program.
 */
export class ElectronDouble {
  isReady = false;
  isFirst = true;
  quits = 0;
  readonly paths = new Map([['userData', 'user-data']]);
  /** Electron keeps the lock of the one instance in this folder. */
  lockedIn: string | undefined;
  schemes: Electron.CustomScheme[] = [];
  isSandboxed = false;
  menu: Electron.MenuItemConstructorOptions[] | null = null;
  readonly windows: (Contents & { url: string; shown: boolean; options: Electron.BrowserWindowConstructorOptions })[] = [];
  readonly handlers = new Map<string, Handler>();
  readonly protocols = new Map<string, (request: Request) => Promise<Response>>();
  permission: ((contents: unknown, permission: string, grant: (granted: boolean) => void) => void) | undefined;
  permissionCheck: (() => boolean) | undefined;
  devicePermission: (() => boolean) | undefined;
  beforeRequest: Ask | undefined;

  readonly app = Object.assign(new Emitter(), {
    requestSingleInstanceLock: () => {
      this.lockedIn = this.paths.get('userData');
      return this.isFirst;
    },
    getPath: (name: string) => this.paths.get(name) ?? '',
    setPath: (name: string, folder: string) => {
      this.#mustBe('before');
      this.paths.set(name, folder);
    },
    enableSandbox: () => {
      this.#mustBe('before');
      this.isSandboxed = true;
    },
    whenReady: async () => {
      await Promise.resolve();
      this.isReady = true;
    },
    quit: () => {
      this.quits++;
    },
  });
  readonly protocol = {
    registerSchemesAsPrivileged: (schemes: Electron.CustomScheme[]) => {
      this.#mustBe('before');
      this.schemes.push(...schemes);
    },
    handle: (scheme: string, handler: (request: Request) => Promise<Response>) => {
      this.#mustBe('after');
      this.protocols.set(scheme, handler);
    },
  };
  readonly ipcMain = {
    handle: (channel: string, handler: Handler) => {
      if (this.handlers.has(channel)) throw new Error(`a second handler for ${channel}`);
      this.handlers.set(channel, handler);
    },
  };
  readonly defaultSession = Object.assign(new Emitter(), {
    setPermissionRequestHandler: (handler: ElectronDouble['permission']) => (this.permission = handler),
    setPermissionCheckHandler: (handler: () => boolean) => (this.permissionCheck = handler),
    setDevicePermissionHandler: (handler: () => boolean) => (this.devicePermission = handler),
    webRequest: { onBeforeRequest: (handler: Ask) => (this.beforeRequest = handler) },
  });
  readonly Menu = {
    buildFromTemplate: (template: Electron.MenuItemConstructorOptions[]) => template,
    setApplicationMenu: (menu: Electron.MenuItemConstructorOptions[]) => {
      this.menu = menu;
    },
  };
  /** What the user of the save dialog does; it notes what was asked, and over which window. */
  whereTo: (options: Electron.SaveDialogOptions) => Promise<Electron.SaveDialogReturnValue> = () =>
    Promise.resolve({ canceled: true, filePath: '' });
  readonly asked: { readonly window: unknown; readonly options: Electron.SaveDialogOptions }[] = [];
  readonly dialog = {
    showSaveDialog: (...given: [Electron.SaveDialogOptions] | [unknown, Electron.SaveDialogOptions]) => {
      this.#mustBe('after');
      const [window, options] = given.length === 2 ? given : [null, given[0]];
      this.asked.push({ window, options });
      return this.whereTo(options);
    },
  };
  readonly BrowserWindow = this.#windowClass();

  get parts(): Parts {
    const { app, protocol, dialog, ipcMain, Menu, BrowserWindow, defaultSession } = this;
    return { app, protocol, dialog, ipcMain, Menu, BrowserWindow, session: { defaultSession } } as unknown as Parts;
  }

  #windowClass() {
    const opened = (options: Electron.BrowserWindowConstructorOptions) => {
      this.#mustBe('after');
      const contents = Object.assign(new Contents(), { url: '', shown: false, options });
      this.windows.push(contents);
      this.app.say('web-contents-created', {}, contents);
      return contents;
    };
    const windows = () => this.windows;
    return class extends Emitter {
      readonly webContents: ElectronDouble['windows'][number];
      constructor(options: Electron.BrowserWindowConstructorOptions) {
        super();
        this.webContents = opened(options);
      }
      static getAllWindows() {
        return windows().map((webContents) => ({ webContents }));
      }
      static fromWebContents(contents: unknown) {
        return windows().some((known) => known === contents) ? { webContents: contents } : null;
      }
      loadURL(url: string): Promise<void> {
        this.webContents.url = url;
        this.say('ready-to-show');
        return Promise.resolve();
      }
      show(): void {
        this.webContents.shown = true;
      }
    };
  }

  #mustBe(when: 'before' | 'after'): void {
    if ((when === 'after') !== this.isReady) throw new Error(`Electron allows this only ${when} it is ready`);
  }
}

/** An invented member on the double's side does not compile: each of these is `never` only while Electron has all the members. */
type Invented<Mine, Theirs> = Exclude<keyof Mine, keyof Theirs | 'say' | 'heard'>;
type Window = InstanceType<ElectronDouble['BrowserWindow']>;
export const inventsNothing: [
  Invented<ElectronDouble['app'], Electron.App>,
  Invented<ElectronDouble['protocol'], Electron.Protocol>,
  Invented<ElectronDouble['ipcMain'], Electron.IpcMain>,
  Invented<ElectronDouble['dialog'], Electron.Dialog>,
  Invented<Pick<ElectronDouble['BrowserWindow'], 'getAllWindows' | 'fromWebContents'>, typeof Electron.BrowserWindow>,
  Invented<ElectronDouble['defaultSession'], Electron.Session>,
  Invented<ElectronDouble['defaultSession']['webRequest'], Electron.WebRequest>,
  Invented<ElectronDouble['Menu'], typeof Electron.Menu>,
  Invented<Window, Electron.BrowserWindow>,
  Invented<Omit<Contents, 'sent' | 'openHandler' | 'prints' | 'printed'>, Electron.WebContents>,
] extends never[]
  ? true
  : false = true;
