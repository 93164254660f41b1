using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace EpisodePlanner.Data.Rows.Mapping;

internal sealed class LogMapping : IEntityTypeConfiguration<LogRow>
{
    public void Configure(EntityTypeBuilder<LogRow> builder)
    {
        AggregateMapping.Share(builder, "log");
        builder.HasKey(row => new { row.Workshop, row.Id });
        builder.Property(row => row.Outcome).HasConversion<string>();
        builder.Property(row => row.Part).HasConversion<string>();
    }
}
