// Stands in for d3-geo in what a reader's browser loads. Plot imports map projections whether or not a drawing has a
// map; none here has, and without them its chunk is 8 kB smaller. A name that is missing stops the build.
const absent = (): never => {
  throw new Error("The workbook draws no maps.");
};

/** Plot makes one projection of its own as it loads, and asks nothing of it. */
export const geoTransform = (): object => ({});

export {
  absent as geoAlbers,
  absent as geoAlbersUsa,
  absent as geoAzimuthalEqualArea,
  absent as geoAzimuthalEquidistant,
  absent as geoCentroid,
  absent as geoClipRectangle,
  absent as geoConicConformal,
  absent as geoConicEqualArea,
  absent as geoConicEquidistant,
  absent as geoEqualEarth,
  absent as geoEquirectangular,
  absent as geoGnomonic,
  absent as geoGraticule10,
  absent as geoMercator,
  absent as geoOrthographic,
  absent as geoPath,
  absent as geoStereographic,
  absent as geoStream,
  absent as geoTransverseMercator,
};
