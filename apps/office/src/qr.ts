/** A QR code for a terminal. */
import { toString as toText } from 'qrcode';

export function qrText(text: string): Promise<string> {
  return toText(text, { type: 'utf8', errorCorrectionLevel: 'M', margin: 2 });
}
