using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace EpisodePlanner.Data.Rows.Mapping;

/// <summary>What the tables of all aggregates share.</summary>
internal static class AggregateMapping
{
    public static void Share<T>(EntityTypeBuilder<T> builder, string table)
        where T : AggregateRow
    {
        builder.ToTable(table);
        builder.Ignore(row => row.What);
        builder.Ignore(row => row.Title);
        builder.HasOne<WorkshopRow>().WithMany().HasForeignKey(row => row.Workshop).OnDelete(DeleteBehavior.Restrict);
        // What was deleted is looked up by workshop, and forgotten by age.
        builder.HasIndex(row => new { row.Workshop, row.DeletedAt });
        builder.HasIndex(row => row.DeletedAt);
    }
}
