/**
 * The way into the program from a page: what is exported takes the text of a scenario and returns
 * text. All of it is compiled to JavaScript; nothing here is part of the command line's build.
 */
package settle.web;
