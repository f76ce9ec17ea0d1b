/**
 * The house as a whole: arrangements, aims and run, {@linkplain settle.scenarios.house.HouseReader
 * all of it together}, and what is doubtful only where parts are seen beside each other.
 */
package settle.scenarios.house;
