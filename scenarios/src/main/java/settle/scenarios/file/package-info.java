/**
 * Scenarios in files. Nothing else in the format knows of a file system, so that all the rest runs
 * where there is none.
 */
package settle.scenarios.file;
