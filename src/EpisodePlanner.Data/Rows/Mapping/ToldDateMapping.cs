using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace EpisodePlanner.Data.Rows.Mapping;

internal sealed class ToldDateMapping : IEntityTypeConfiguration<ToldDateRow>
{
    public void Configure(EntityTypeBuilder<ToldDateRow> builder)
    {
        AggregateMapping.Share(builder, "told_dates");
        builder.HasKey(row => new { row.Workshop, row.Id });
    }
}
