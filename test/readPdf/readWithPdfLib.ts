import {
  decodePDFRawStream,
  PDFArray,
  PDFDict,
  PDFDocument,
  PDFName,
  type PDFPage,
  PDFRawStream,
  PDFStream,
} from 'pdf-lib';

/** A page as it stands in the file. Boxes in points as left, bottom, right, top; null where the page has none. */
export interface RawPage {
  readonly mediaBox: readonly number[];
  readonly cropBox: readonly number[] | null;
  readonly rotation: number;
  /** The page's drawing operators, unpacked. */
  readonly content: string;
}

/** What stands in a file, as pdf-lib finds it. */
export interface RawReading {
  readonly pages: readonly RawPage[];
  /** Entries of the catalog and of its viewer preferences, as written: "/None", "true", "(en)". */
  readonly catalog: Readonly<Record<string, string>>;
  readonly viewerPreferences: Readonly<Record<string, string>>;
  readonly fonts: readonly { readonly name: string; readonly embedded: boolean }[];
}

/** Reads what stands in a PDF with pdf-lib: boxes, decoded page contents, catalog and fonts. */
export async function readWithPdfLib(bytes: Uint8Array): Promise<RawReading> {
  const document = await PDFDocument.load(bytes, { updateMetadata: false });
  const preferences = document.catalog.lookupMaybe(PDFName.of('ViewerPreferences'), PDFDict);
  return {
    pages: document.getPages().map(readPage),
    catalog: entriesOf(document.catalog),
    viewerPreferences: preferences ? entriesOf(preferences) : {},
    fonts: document.context
      .enumerateIndirectObjects()
      .flatMap(([, object]) =>
        object instanceof PDFDict && object.get(PDFName.of('Type')) === PDFName.of('FontDescriptor') ? [object] : [],
      )
      .map((descriptor) => ({
        name: String(descriptor.get(PDFName.of('FontName'))).slice(1),
        embedded: descriptor.lookup(PDFName.of('FontFile2')) instanceof PDFStream,
      })),
  };
}

const entriesOf = (dictionary: PDFDict): Record<string, string> =>
  Object.fromEntries(dictionary.entries().map(([name, value]) => [name.asString().slice(1), value.toString()]));

function readPage(page: PDFPage): RawPage {
  const cropBox = page.node.CropBox();
  return {
    mediaBox: numbersOf(page.node.MediaBox()),
    cropBox: cropBox ? numbersOf(cropBox) : null,
    rotation: page.getRotation().angle,
    content: contentOf(page),
  };
}

const numbersOf = (box: PDFArray): number[] => box.asArray().map((side) => Number(side.toString()));

function contentOf(page: PDFPage): string {
  const contents = page.node.Contents();
  const streams =
    contents instanceof PDFArray ? contents.asArray().map((part) => page.doc.context.lookup(part)) : [contents];
  return streams
    .map((stream) => {
      if (!(stream instanceof PDFRawStream)) throw new Error('expected the content of a page as a stream');
      return new TextDecoder('latin1').decode(decodePDFRawStream(stream).decode());
    })
    .join('\n');
}
