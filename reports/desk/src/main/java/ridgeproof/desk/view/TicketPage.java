package ridgeproof.desk.view;

import java.util.List;

/**
 * What a ticket for one file would tell.
 *
 * @param id of the file
 * @param ticket its text
 * @param copyBytes size of the safe copy
 * @param copyLayout the safe copy, record by record, with every value in it
 * @param absent what neither of them holds, in words
 */
public record TicketPage(
    String id, String ticket, long copyBytes, String copyLayout, List<String> absent) {}
