import type { Plan } from '../../../engine/index.ts';

/** Stands where a picture stood, in a stored plan: a picture is kept once, not once a step of the history. */
const TOKEN = 'kept-picture:';

/**
 * The plan with its pictures (its own and those of its past years) swapped for tokens, which are added to `pictures`.
 */
export function withoutPictures(plan: Plan, pictures: Map<string, string>): Plan {
  return mapPictures(plan, (image) => {
    if (image.startsWith(TOKEN)) return image;
    const name = pictureName(image);
    pictures.set(name, image);
    return TOKEN + name;
  });
}

/** The plan with its pictures put back. A picture that is gone leaves the plan without an underlay. */
export function withPictures(plan: Plan, pictures: ReadonlyMap<string, string>): Plan {
  return mapPictures(plan, (image) =>
    image.startsWith(TOKEN) ? (pictures.get(image.slice(TOKEN.length)) ?? null) : image,
  );
}

function mapPictures(plan: Plan, change: (image: string) => string | null): Plan {
  let next = plan;
  const underlay = plan.site.underlay;
  if (underlay) {
    const image = change(underlay.image);
    if (image !== underlay.image)
      next = { ...next, site: { ...next.site, underlay: image === null ? undefined : { ...underlay, image } } };
  }
  if (plan.past) {
    const past = plan.past.map((year) => {
      const before = mapPictures(year.plan, change);
      return before === year.plan ? year : { ...year, plan: before };
    });
    if (past.some((year, index) => year !== plan.past?.[index])) next = { ...next, past };
  }
  return next;
}

/** Two 32-bit FNV-1a sums over the text and its length: the same picture has the same name. */
function pictureName(image: string): string {
  let a = 0x811c9dc5;
  let b = 0x01000193;
  for (let i = 0; i < image.length; i++) {
    const code = image.charCodeAt(i);
    a = Math.imul(a ^ code, 0x01000193);
    b = Math.imul(b ^ code, 0x85ebca6b) + i;
  }
  return `${image.length.toString(36)}-${(a >>> 0).toString(36)}-${(b >>> 0).toString(36)}`;
}
