/**
 * The one way in which the page's messages are answered. Looks at the frame that sent it (sub-frames share
 * `event.sender` with the page), then at the size, then at the shape; only then does the method run, and
 * whatever happens there is an answer, never an exception across the border.
 */

import { ipcMain, type IpcMainInvokeEvent, type WebFrameMain } from 'electron';
import { told } from '../../core/words/told.ts';
import { type BridgeMethod, channelOf } from '../contract/bridge.ts';
import type { HostAnswer } from '../contract/host.ts';
import { largestRequestBytes, readRequest, type Request, type Value } from '../contract/wire.ts';
import { refused } from '../files/answer.ts';
import { isPageAddress } from './page-address.ts';
import { isWithinBytes } from './payload-size.ts';

/** The page's main frame at this moment, null where there is no window. */
export type MainFrame = () => WebFrameMain | null;

export function handle<M extends BridgeMethod>(
  method: M,
  mainFrame: MainFrame,
  work: (request: Request<M>) => Promise<HostAnswer<Value<M>>>,
): void {
  ipcMain.handle(channelOf(method), async (event, ...sent: unknown[]): Promise<HostAnswer<Value<M>>> => {
    if (!isFromPage(event, mainFrame())) {
      return refused(
        'not-allowed',
        told(({ refusals }) => refusals.request.ownPageOnly),
      );
    }
    if (sent.length !== 1 || !isWithinBytes(sent[0], largestRequestBytes(method))) {
      return refused(
        'too-large',
        told(({ refusals }) => refusals.request.tooLarge),
      );
    }
    const checked = readRequest(method, sent[0]);
    if (!checked.ok) return checked;
    try {
      return await work(checked.value);
    } catch (error) {
      return refused(
        'unknown',
        told(({ refusals }) => refusals.request.failedAt, { method, error: String(error) }),
      );
    }
  });
}

/** Whether the message comes from the window's main frame, showing the program's own address. */
export function isFromPage(
  event: Pick<IpcMainInvokeEvent, 'senderFrame'>,
  mainFrame: WebFrameMain | null,
): boolean {
  const sender = event.senderFrame;
  if (sender === null || mainFrame === null) return false;
  // Compared by process and routing identity too: Electron may hand out two objects for one frame.
  const isSameFrame =
    sender === mainFrame ||
    (sender.processId === mainFrame.processId && sender.routingId === mainFrame.routingId);
  return isSameFrame && sender.parent === null && isPageAddress(sender.url);
}
