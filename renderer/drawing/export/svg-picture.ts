/** Turns a drawing into a picture. */

const DOTS_PER_MM = 8;
/** Browsers refuse larger canvases. */
const MOST_SIDE_PX = 8192;
const MM_SIZE = /<svg[^>]*\swidth="([\d.]+)mm"[^>]*\sheight="([\d.]+)mm"/;

/** The SVG drawing as PNG, about 200 dots to the inch; null where the browser cannot. */
export async function pngOf(svg: string): Promise<Blob | null> {
  const size = MM_SIZE.exec(svg);
  if (size === null) return null;
  const [widthMm, heightMm] = [Number(size[1]), Number(size[2])];
  const scale = Math.min(DOTS_PER_MM, MOST_SIDE_PX / Math.max(widthMm, heightMm));
  const canvas = document.createElement('canvas');
  canvas.width = Math.round(widthMm * scale);
  canvas.height = Math.round(heightMm * scale);
  const address = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    const context = canvas.getContext('2d');
    if (context === null) return null;
    context.fillStyle = '#ffffff';
    context.fillRect(0, 0, canvas.width, canvas.height);
    context.drawImage(image, 0, 0, canvas.width, canvas.height);
    return await new Promise((resolve) => canvas.toBlob(resolve, 'image/png'));
  } catch {
    return null;
  } finally {
    URL.revokeObjectURL(address);
  }
}
