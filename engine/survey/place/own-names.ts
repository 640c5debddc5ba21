/**
 * What people call towns whose names the list has in English, or has otherwise than most: the usual ones, from memory,
 * as `plain` writes them.
 */
export const OWN_NAMES: ReadonlyMap<string, readonly string[]> = new Map(
  (
    'Athens=athina/αθηνα;Belgrade=beograd;Brussels=bruxelles/brussel;Bucharest=bucuresti;' +
    'Copenhagen=københavn;Florence=firenze;Genoa=genova;Havana=la habana;Icel=mersin;Iraklio=heraklion;' +
    'Kyiv=kiev;Lisbon=lisboa;Makkah=mecca;Marrakesh=marrakech;Mexico City=ciudad de mexico/cdmx;' +
    'Milan=milano;Moscow=moskva;Munich=munchen;Naples=napoli;Prague=praha;Rome=roma;Seville=sevilla;' +
    'Thessaloniki=saloniki;Turin=torino;Vienna=wien;Warsaw=warszawa'
  )
    .split(';')
    .map((row) => row.split('='))
    .map(([name, own]) => [name, own.split('/')]),
);
