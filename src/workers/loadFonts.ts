import { fail, ok, type Result } from '../core/result';
import type { PdfFonts } from '../exporters/pdf/writePdf';

const FILES: Readonly<Record<keyof PdfFonts, string>> = {
  regular: 'DejaVuSansCondensed.ttf',
  bold: 'DejaVuSansCondensed-Bold.ttf',
};

/**
 * Fetches both cuts of the printed font from a folder of the app itself.
 *
 * Codes: fonts.elsewhere (the folder is not of this origin), fonts.missing (a file did not come).
 *
 * @param fontBase address of the folder, ending in a slash
 * @param origin origin of the app
 */
export async function loadFonts(fontBase: string, origin: string, get: typeof fetch): Promise<Result<PdfFonts>> {
  if (new URL(fontBase).origin !== origin) {
    return fail('', 'fonts.elsewhere', `Expected the printed font at ${origin}, got the address ${fontBase}.`);
  }
  try {
    const load = async (file: string): Promise<Uint8Array> => {
      const answer = await get(new URL(file, fontBase));
      if (!answer.ok) throw new Error(`the server answered ${answer.status} for ${file}`);
      return new Uint8Array(await answer.arrayBuffer());
    };
    const [regular, bold] = await Promise.all([load(FILES.regular), load(FILES.bold)]);
    return ok({ regular, bold });
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    return fail(
      '',
      'fonts.missing',
      `The printed font could not be loaded (${reason}). Reload the page and try again.`,
    );
  }
}
