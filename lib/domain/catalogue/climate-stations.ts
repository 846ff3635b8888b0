import type { Climate } from "#lib/domain/records/climate";
import type { Origin } from "#lib/domain/sourced";
import { toCelsius } from "#lib/domain/weather";
import { publishedIn } from "./marked";

/** Where the mean highs and lows of every station stand: US climate normals of 1981 to 2010. Its latitudes are from memory. */
export const CLIMATE_ORIGIN: Origin = publishedIn("CCD-NORM");

type TwelveF = readonly number[];

const station = (place: string, latitudeDegrees: number, highsF: TwelveF, lowsF: TwelveF): Climate => ({
  station: place,
  latitudeDegrees,
  monthlyHighsC: highsF.map((high) => toCelsius(high, "f")),
  monthlyLowsC: lowsF.map((low) => toCelsius(low, "f")),
});

/**
 * Climates to choose from by name, in order of place: mean daily high and low of each month, January to December, as published in degrees
 * Fahrenheit. A station stands at an airport or in a town; a farm in a hollow or on a hill is colder.
 */
export const CLIMATE_STATIONS: readonly Climate[] = [
  station(
    "Albany, New York",
    42.7,
    [30.6, 34.6, 44.4, 58.3, 69.4, 77.9, 82.3, 80.4, 72.2, 59.8, 47.9, 35.8],
    [14.5, 17.3, 25.7, 37.3, 47.1, 56.5, 61.4, 59.9, 51.6, 39.6, 31.5, 21.2],
  ),
  station(
    "Asheville, North Carolina",
    35.6,
    [47.0, 50.6, 58.2, 67.0, 74.0, 79.2, 82.3, 81.4, 75.6, 67.8, 58.6, 48.4],
    [23.4, 26.4, 31.8, 39.8, 48.6, 56.6, 60.4, 59.4, 52.8, 40.9, 32.2, 25.6],
  ),
  station(
    "Burlington, Vermont",
    44.5,
    [27.2, 30.6, 40.0, 54.7, 67.2, 76.3, 80.9, 79.0, 70.4, 57.2, 45.5, 33.2],
    [10.2, 12.5, 22.0, 34.8, 45.4, 55.3, 60.3, 58.5, 50.7, 39.1, 30.9, 18.5],
  ),
  station(
    "Columbus, Ohio",
    40.0,
    [36.5, 40.6, 51.1, 63.5, 72.9, 81.6, 84.9, 83.7, 77.0, 65.1, 52.6, 40.1],
    [22.6, 25.0, 32.7, 42.6, 52.2, 61.5, 65.5, 64.1, 56.5, 45.0, 36.1, 26.8],
  ),
  station(
    "Harrisburg, Pennsylvania",
    40.2,
    [37.0, 40.7, 50.4, 62.4, 72.1, 81.0, 85.5, 83.4, 75.6, 64.1, 53.1, 41.3],
    [22.8, 25.1, 33.0, 41.9, 52.1, 62.0, 66.3, 64.5, 56.2, 44.6, 35.1, 26.6],
  ),
  station(
    "Louisville, Kentucky",
    38.2,
    [42.5, 46.6, 56.6, 67.1, 76.3, 84.6, 87.2, 87.1, 80.0, 68.7, 56.4, 45.1],
    [26.5, 29.7, 37.4, 47.0, 56.2, 65.5, 68.5, 68.0, 59.2, 47.7, 38.5, 29.4],
  ),
  station(
    "Madison, Wisconsin",
    43.1,
    [26.4, 31.1, 43.1, 57.3, 68.4, 77.9, 81.6, 79.4, 71.8, 58.9, 44.1, 30.2],
    [11.1, 15.1, 24.8, 35.8, 46.1, 56.1, 61.0, 59.0, 50.2, 38.8, 28.2, 15.9],
  ),
  station(
    "Raleigh, North Carolina",
    35.9,
    [50.9, 55.2, 63.4, 72.4, 79.6, 87.1, 90.2, 88.4, 82.1, 72.7, 63.6, 53.6],
    [31.0, 33.8, 39.9, 48.0, 56.5, 65.8, 69.9, 68.6, 61.7, 49.8, 40.8, 33.3],
  ),
  station(
    "Richmond, Virginia",
    37.5,
    [47.4, 51.3, 60.0, 70.3, 77.9, 86.1, 89.7, 87.6, 81.2, 71.0, 61.4, 50.7],
    [28.3, 30.5, 37.1, 46.1, 55.0, 64.5, 68.9, 67.4, 60.1, 48.3, 39.4, 31.4],
  ),
  station(
    "St. Louis, Missouri",
    38.7,
    [39.9, 45.0, 55.9, 67.4, 76.3, 85.1, 89.1, 87.9, 80.2, 68.5, 55.5, 42.5],
    [23.7, 27.6, 36.6, 47.2, 57.2, 66.8, 71.0, 69.4, 60.6, 49.0, 38.1, 26.9],
  ),
];
